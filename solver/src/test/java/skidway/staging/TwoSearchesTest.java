package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.Tasks.task;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import skidway.testkit.RandomDelivery;

class TwoSearchesTest {
  private static final long EFFORT = TwoSearches.WORTH_TWO;

  private final Board board =
      Survey.of(task(aSite().build(), RandomDelivery.bundles(new Random(8), 40)));

  private Occupancy laid(int[] spotOf) {
    Occupancy occupancy = Boards.ground(board).empty();
    occupancy.restore(spotOf);
    return occupancy;
  }

  private int[] start() {
    Occupancy occupancy = Boards.ground(board).empty();
    new RegretInsertion(occupancy).fill();
    return occupancy.snapshot();
  }

  private int[] two(long seed) {
    return new TwoSearches(Boards.ground(board), EnvironmentMode.REPRODUCIBLE)
        .improve(start(), seed, EFFORT, (placed, costMs) -> {});
  }

  private int[] half(long seed) {
    return new Annealing(Boards.ground(board), EnvironmentMode.REPRODUCIBLE)
        .improve(start(), seed, EFFORT / 2, (placed, costMs) -> {});
  }

  @ParameterizedTest
  @CsvSource({"3, true", "2, false"})
  void theBetterOfBothCountsHoweverFastEitherRuns(long seed, boolean secondWins) {
    int[] first = half(seed);
    int[] second = half(TwoSearches.otherDice(seed));
    assertThat(laid(second).isBetterThan(laid(first))).isEqualTo(secondWins);
    assertThat(two(seed)).isEqualTo(secondWins ? second : first);
  }
}
