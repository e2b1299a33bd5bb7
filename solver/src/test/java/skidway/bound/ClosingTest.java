package skidway.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Mending and closing against all plans there are, however few sets a part may have. */
class ClosingTest {
  private static final long STEPS = 2_000_000;

  static IntStream seeds() {
    return IntStream.range(0, 60);
  }

  /** A small problem, its bound half risen, and a plan that is not the best. */
  private static final class Case {
    final RandomGround ground;
    final AllPlans plans;
    final int moments;
    final Cliques cliques;
    final Relaxation relaxation;
    final Answer answer;
    final long cheapestMs;
    long foundMs;

    Case(int seed) {
      moments = 1 + seed % 3;
      ground = new RandomGround(new Random(seed), 4, 5, moments);
      plans = new AllPlans(ground);
      cheapestMs = plans.cheapestMs(0);
      cliques = Cliques.of(ground);
      Openings openings = Openings.of(ground, (b, s) -> true);
      relaxation = new Relaxation(ground, cliques, openings, moments, 0);
      AscentBySets ascent =
          new AscentBySets(
              relaxation,
              new KnownSets(ground, cliques, 0),
              relaxation.ask(relaxation.start(openings), Long.MAX_VALUE));
      ascent.run(isSolvable() ? cheapestMs : 10_000, 300, () -> false);
      answer = ascent.best();
    }

    boolean isSolvable() {
      return cheapestMs < Long.MAX_VALUE;
    }

    Pool pool(long costMs) {
      return new Gathering(ground, relaxation, answer).run(costMs, Long.MAX_VALUE).orElseThrow();
    }

    Judge.Verdict judge(int[] spotOf) {
      long costMs = plans.costMs(spotOf);
      if (costMs == Long.MAX_VALUE) {
        return Judge.Verdict.ILLEGAL;
      }
      assertThat(costMs).isLessThan(foundMs);
      foundMs = costMs;
      return Judge.Verdict.SOUND;
    }

    Closing closed(long knownMs, long steps) {
      foundMs = knownMs;
      Closing closing =
          new Closing(ground, cliques, moments, pool(knownMs), 1, knownMs, this::judge);
      closing.run(steps, () -> false);
      return closing;
    }

    /** What a plan costs that was mended, by its own account. */
    long mended(int[] begun, long steps) {
      foundMs = plans.costMs(begun);
      return new Mending(ground, moments, pool(foundMs), begun, foundMs, this::judge)
          .run(steps, () -> false);
    }

    /** Any legal plan; of no length if none is met. */
    int[] somePlan(Random random) {
      for (int i = 0; i < 100_000; i++) {
        int[] spotOf = random.ints(4, 0, 5).toArray();
        if (plans.costMs(spotOf) < Long.MAX_VALUE) {
          return spotOf;
        }
      }
      return new int[0];
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void splittingDownToNearlyNothingFindsTheCheapestPlanToo(int seed) {
    Case c = new Case(seed);
    long knownMs = c.isSolvable() ? c.cheapestMs + 1 + 20L * seed : 20_000;
    Closing closing = c.closed(knownMs, STEPS);
    assertThat(c.foundMs).isEqualTo(Math.min(knownMs, c.cheapestMs));
    assertThat(closing.provenMs()).isEqualTo(c.foundMs);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whoeverStopsClosingGetsABoundBelowEveryPlan(int seed) {
    Case c = new Case(seed);
    long knownMs = c.isSolvable() ? c.cheapestMs + 300 : 20_000;
    for (long steps = 1; steps < 2_000; steps *= 3) {
      Closing closing = c.closed(knownMs, steps);
      assertThat(closing.provenMs()).isLessThanOrEqualTo(Math.min(knownMs, c.cheapestMs));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void mendingEndsAtALegalPlanThatCostsWhatItSays(int seed) {
    Case c = new Case(seed);
    int[] begun = c.somePlan(new Random(seed));
    if (begun.length > 0) {
      long mendedMs = c.mended(begun, 20_000);
      assertThat(mendedMs).isEqualTo(c.foundMs).isGreaterThanOrEqualTo(c.cheapestMs);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void plansOfFourBundlesAreMendedToTheBest(int seed) {
    Case c = new Case(seed);
    int[] begun = c.somePlan(new Random(seed));
    if (begun.length > 0) {
      c.mended(begun, 200_000);
      assertThat(c.foundMs).as(Arrays.toString(begun)).isEqualTo(c.cheapestMs);
    }
  }
}
