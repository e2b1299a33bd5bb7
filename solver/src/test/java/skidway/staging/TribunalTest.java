package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import skidway.bound.Judge.Verdict;
import skidway.plan.Task;
import skidway.site.Spot;

class TribunalTest {
  private static final Spot[] SPOTS = {
    spot("A", "yard", 8, 8, 4.5, 1),
    spot("B", "yard", 16, 8, 4.5, 1),
    spot("C", "yard", 24, 8, 4.5, 1)
  };

  private final Board board = board();
  private final List<int[]> walked = new ArrayList<>();

  private static Board board() {
    Task task =
        task(
            aSite().spots(SPOTS).build(),
            aBundle("one").load("L1", 1).piece("W1", 1, 1, 3).build(),
            aBundle("two").load("L1", 2).piece("W1", 1, 2, 3).build());
    return Boards.board(task, SPOTS);
  }

  /** Stacks on the first two spots shut a path. */
  private List<int[]> shut(Occupancy plan) {
    walked.add(plan.snapshot());
    boolean both = IntStream.of(plan.snapshot()).boxed().toList().containsAll(List.of(0, 1));
    return both ? List.of(new int[] {0, 1}) : List.of();
  }

  private Tribunal tribunal(boolean carriedOut) {
    Occupancy found = Boards.ground(board).empty();
    return new Tribunal(found, Boards.ground(board), this::shut, plan -> carriedOut);
  }

  @Test
  void aPlanThatCanBeWalkedThroughAndCarriedOutIsKept() {
    Tribunal tribunal = tribunal(true);
    assertThat(tribunal.verdict(new int[] {0, 2})).isEqualTo(Verdict.SOUND);
    assertThat(tribunal.best().snapshot()).containsExactly(0, 2);
  }

  @Test
  void aPlanThatCannotBeCarriedOutIsLegalOnly() {
    Tribunal tribunal = tribunal(false);
    assertThat(tribunal.verdict(new int[] {0, 2})).isEqualTo(Verdict.LEGAL);
    assertThat(tribunal.best().unplaced()).isEqualTo(2);
  }

  @Test
  void aPathThatWasShutOnceIsNotWalkedAgain() {
    Tribunal tribunal = tribunal(true);
    assertThat(tribunal.verdict(new int[] {0, 1})).isEqualTo(Verdict.LEGAL);
    assertThat(tribunal.verdict(new int[] {1, 0})).isEqualTo(Verdict.LEGAL);
    assertThat(walked).hasSize(1);
    assertThat(tribunal.verdict(new int[] {1, 2})).isEqualTo(Verdict.SOUND);
    assertThat(walked).hasSize(2);
  }

  @Test
  void theBestPlanIsPolishedPastAPathThatWouldBeShut() {
    Tribunal tribunal = tribunal(true);
    tribunal.verdict(new int[] {0, 2});
    long beforeMs = tribunal.best().costMs();
    tribunal.polish();
    assertThat(tribunal.best().unplaced()).isZero();
    assertThat(tribunal.best().costMs()).isLessThanOrEqualTo(beforeMs);
    assertThat(shut(tribunal.best())).isEmpty();
    int walks = walked.size();
    tribunal.polish();
    assertThat(walked).hasSize(walks);
  }
}
