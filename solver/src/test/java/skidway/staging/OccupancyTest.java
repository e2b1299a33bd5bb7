package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.testkit.RandomDelivery;

class OccupancyTest {
  private static final int[][] FIRST_TWO_EXCLUDE = {{1}, {0}, {}, {}};

  private static Board board(long seed) {
    return Boards.board(
        task(aSite().build(), RandomDelivery.bundles(new Random(seed), 10)),
        FIRST_TWO_EXCLUDE,
        spot("A", "yard", 10, 8, 4.5, 1),
        spot("B", "yard", 10, 9, 4.5, 1),
        spot("C", "yard", 16, 8, 4.5, 1),
        rack("R", "yard", 22, 8, 2, 1));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void whatIsKeptUpToDateEqualsWhatIsCountedAfresh(long seed) {
    Board board = board(seed);
    Occupancy kept = Boards.ground(board).empty();
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      int bundle = random.nextInt(10);
      kept.take(bundle);
      kept.put(bundle, random.nextInt(5) - 1);
      Occupancy fresh = Boards.ground(board).empty();
      fresh.restore(kept.snapshot());
      assertThat(kept.costMs()).isEqualTo(fresh.costMs());
      assertThat(kept.brokenRules()).isEqualTo(fresh.brokenRules());
      assertThat(kept.unplaced()).isEqualTo(fresh.unplaced());
    }
  }

  @Test
  void spotsThatExcludeEachOtherAreCountedOnce() {
    Occupancy occupancy = Boards.ground(board(1)).empty();
    occupancy.put(0, 0);
    assertThat(occupancy.legal()).isTrue();
    assertThat(occupancy.free(1)).isFalse();
    assertThat(occupancy.free(2)).isTrue();
    occupancy.put(1, 1);
    assertThat(occupancy.brokenRules()).isEqualTo(1);
    occupancy.take(0);
    assertThat(occupancy.legal()).isTrue();
  }

  @Test
  void spotsThatTogetherShutAPathAreRefusedOnlyTogether() {
    Board board = board(1);
    Occupancy occupancy =
        new Occupancy(board, new StackEvaluator(board, Waits.FREE), List.of(new int[] {0, 2}));
    occupancy.put(0, 0);
    assertThat(occupancy.legal()).isTrue();
    occupancy.put(1, 2);
    assertThat(occupancy.legal()).isFalse();
  }
}
