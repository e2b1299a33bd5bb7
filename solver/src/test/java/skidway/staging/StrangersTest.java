package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;

class StrangersTest {
  @Test
  void twoThatNobodyMayLayOnEachOther() {
    Board board =
        Boards.board(
            task(
                aSite().build(),
                aBundle("long").load("L1", 1).size(5, 0.6, 0.2).piece("W1", 1, 1, 2).build(),
                aBundle("wide").load("L1", 2).size(3, 1.2, 0.2).piece("W1", 2, 1, 2).build(),
                aBundle("small").load("L1", 3).size(3, 0.6, 0.2).piece("W1", 3, 1, 2).build()),
            spot("S", "yard", 15, 8, 5, 2));
    Strangers strangers = new Strangers(board, Waits.FREE);
    assertThat(strangers.are(0, 1)).isTrue();
    assertThat(strangers.are(1, 0)).isTrue();
    assertThat(strangers.are(0, 2)).isFalse();
    assertThat(strangers.are(1, 2)).isFalse();
  }

  /** Nobody waits, so the lighter one of two must also be the later one. */
  @Test
  void theyAreThosePairsThatHaveNoOrder() {
    Board board = new Bay(3, 3, List.of(3, 1, 2, 6, 5, 4), List.of(4, 2, 6, 2, 5, 1)).board();
    StackEvaluator evaluator = new StackEvaluator(board, Waits.NONE);
    for (int high = 1; high < board.bundleCount(); high++) {
      for (int low = 0; low < high; low++) {
        boolean legal = evaluator.best(new int[] {low, high}, 2, 0).legal();
        assertThat(evaluator.neverTogether(low, high)).isEqualTo(!legal);
      }
    }
  }

  @Test
  void aChangeThatBringsThemTogetherIsNotTriedUnlessOneGoes() {
    Board board = new Bay(2, 3, List.of(1, 2, 3), List.of(1, 2, 3)).board();
    StagingSolution.Ground ground = Boards.ground(board);
    Occupancy live =
        new Occupancy(board, new StackEvaluator(board, Waits.NONE), ground.shutTogether());
    live.put(0, 0);
    live.put(1, 1);
    Change change = new Change();
    change.send(1, 0);
    assertThat(change.keepsRules(live)).isFalse();
    change.send(0, 1);
    assertThat(change.keepsRules(live)).isTrue();
    change.clear();
    change.send(2, 0);
    change.send(0, 1);
    change.send(1, 0);
    assertThat(change.keepsRules(live)).isFalse();
  }
}
