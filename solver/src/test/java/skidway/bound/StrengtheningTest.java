package skidway.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Charging rivals: which are found, and that no plan is lost by it. */
class StrengtheningTest {
  private static final Ground GROUND = new RandomGround(new Random(1), 6, 6, 1);

  static IntStream seeds() {
    return IntStream.range(0, 60);
  }

  private static Column column(int spot, int... bundles) {
    return new Column(GROUND, spot, bundles, 0, 0);
  }

  private static List<BitSet> found(List<Column> columns, double... shares) {
    return new RivalSearch(columns, new Clashes(GROUND), shares, new long[shares.length]).find(10);
  }

  private static BitSet bits(int... numbers) {
    BitSet bits = new BitSet();
    Arrays.stream(numbers).forEach(bits::set);
    return bits;
  }

  /** Three bundles, two and two together on three spots: half of each set is one and a half. */
  @Test
  void threeHalvesThatClashAreFoundAndWhatClashesWithAllJoinsThem() {
    List<Column> columns =
        List.of(column(0, 0, 1), column(1, 0, 2), column(2, 1, 2), column(3, 0, 1, 2));
    assertThat(found(columns, 0.5, 0.5, 0.5, 0)).containsExactly(bits(0, 1, 2, 3));
  }

  @Test
  void aThirdOfEachIsNotTooMuch() {
    List<Column> columns = List.of(column(0, 0, 1), column(1, 0, 2), column(2, 1, 2));
    assertThat(found(columns, 0.34, 0.34, 0.34)).isEmpty();
  }

  @Test
  void whatGoesTogetherIsNoRival() {
    Column first = column(0, 0);
    Column second = column(spotBeside(0), 1);
    assertThat(found(List.of(first, second), 0.9, 0.9)).isEmpty();
  }

  private static int spotBeside(int spot) {
    return IntStream.range(1, GROUND.spots())
        .filter(s -> Arrays.stream(GROUND.excludes(spot)).noneMatch(e -> e == s))
        .findFirst()
        .orElseThrow();
  }

  /** Every plan cheaper than the known one is still there, and its cost is not below the bound. */
  @ParameterizedTest
  @MethodSource("seeds")
  void noPlanIsLost(int seed) {
    int moments = 1 + seed % 3;
    RandomGround ground = new RandomGround(new Random(seed), 4, 5, moments);
    AllPlans plans = new AllPlans(ground);
    long cheapestMs = plans.cheapestMs(0);
    if (cheapestMs == Long.MAX_VALUE) {
      return;
    }
    Cliques cliques = Cliques.of(ground);
    Openings openings = Openings.of(ground, (b, s) -> true);
    Relaxation relaxation = new Relaxation(ground, cliques, openings, moments, 0);
    AscentBySets ascent =
        new AscentBySets(
            relaxation,
            new KnownSets(ground, cliques, 0),
            relaxation.ask(relaxation.start(openings), Long.MAX_VALUE));
    ascent.run(cheapestMs, 50, () -> false);
    long knownMs = cheapestMs + 1 + 20L * seed;
    Pool pool =
        new Gathering(ground, relaxation, ascent.best()).run(knownMs, Long.MAX_VALUE).orElseThrow();
    Pool left = new Strengthening(ground, cliques, pool).run(Long.MAX_VALUE, () -> false);
    assertThat(left.boundMs).isLessThanOrEqualTo(cheapestMs);
    long[] bestMs = {Long.MAX_VALUE};
    Completion completion =
        new Completion(
            new Assembly(ground, moments),
            left.ofBundle,
            left.boundMs,
            spotOf -> {
              long costMs = plans.costMs(spotOf);
              bestMs[0] = Math.min(bestMs[0], costMs);
              return costMs == Long.MAX_VALUE ? Judge.Verdict.ILLEGAL : Judge.Verdict.SOUND;
            });
    completion.run(knownMs, Long.MAX_VALUE);
    assertThat(bestMs[0]).isEqualTo(cheapestMs);
  }
}
