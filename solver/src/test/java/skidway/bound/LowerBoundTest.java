package skidway.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every plan of small problems is looked at, so nothing the bound says is taken on trust. */
class LowerBoundTest {
  private static final int STEPS = 5_000;

  static IntStream seeds() {
    return IntStream.range(0, 80);
  }

  private static RandomGround ground(int seed) {
    return new RandomGround(new Random(seed), 4, 4, 1 + seed % 3);
  }

  private static LowerBound raised(Ground ground, int seed, int mayLeave, long aimMs) {
    LowerBound bound = new LowerBound(ground, 1 + seed % 3, mayLeave);
    bound.raise(aimMs, STEPS, () -> false);
    return bound;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noPlanCostsLessThanTheBound(int seed) {
    RandomGround ground = ground(seed);
    int mayLeave = seed % 2;
    long cheapestMs = new AllPlans(ground).cheapestMs(mayLeave);
    // An aim beyond the cheapest plan must not drive the bound past it.
    long aimMs = cheapestMs == Long.MAX_VALUE ? 10_000 : 3 * cheapestMs;
    LowerBound bound = raised(ground, seed, mayLeave, aimMs);
    assertThat(bound.provenMs()).isLessThanOrEqualTo(cheapestMs);
  }

  @Test
  void theBoundIsSeldomFarBelow() {
    double sum = 0;
    int counted = 0;
    for (int seed = 0; seed < 60; seed++) {
      RandomGround ground = ground(seed);
      long cheapestMs = new AllPlans(ground).cheapestMs(0);
      if (cheapestMs < Long.MAX_VALUE) {
        sum += raised(ground, seed, 0, cheapestMs).provenMs() / (double) cheapestMs;
        counted++;
      }
    }
    assertThat(counted).isGreaterThan(20);
    assertThat(sum / counted).isGreaterThan(0.9);
  }

  @Test
  void theSameStepsProveTheSame() {
    RandomGround ground = ground(5);
    assertThat(raised(ground, 5, 0, 4000).provenMs())
        .isEqualTo(raised(ground(5), 5, 0, 4000).provenMs());
  }

  @Test
  void plansThatMayLeaveMoreHaveALowerBound() {
    RandomGround ground = ground(6);
    LowerBound bound = raised(ground, 6, 0, 4000);
    bound.mayLeave(1);
    assertThat(bound.provenMs()).isZero();
    bound.raise(4000, STEPS, () -> false);
    assertThat(bound.provenMs()).isLessThanOrEqualTo(new AllPlans(ground).cheapestMs(1));
  }

  @Test
  void whoeverStopsItGetsWhatIsProvenSoFar() {
    RandomGround ground = ground(6);
    LowerBound bound = new LowerBound(ground, 1, 0);
    bound.raise(4000, Long.MAX_VALUE, () -> true);
    assertThat(bound.provenMs()).isLessThanOrEqualTo(new AllPlans(ground).cheapestMs(0));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void closingFindsTheCheapestPlanAndProvesIt(int seed) {
    RandomGround ground = ground(seed);
    AllPlans plans = new AllPlans(ground);
    long cheapestMs = plans.cheapestMs(0);
    long knownMs = cheapestMs == Long.MAX_VALUE ? 20_000 : cheapestMs + 1 + seed * 10L;
    LowerBound bound = raised(ground, seed, 0, knownMs);
    long[] foundMs = {knownMs};
    bound.gather(knownMs, STEPS, () -> false);
    bound.close(
        knownMs,
        1_000_000,
        () -> false,
        spotOf -> {
          long costMs = plans.costMs(spotOf);
          if (costMs == Long.MAX_VALUE) {
            return Judge.Verdict.ILLEGAL;
          }
          foundMs[0] = costMs;
          return Judge.Verdict.SOUND;
        });
    assertThat(foundMs[0]).isEqualTo(Math.min(knownMs, cheapestMs));
    assertThat(bound.provenMs()).isGreaterThanOrEqualTo(foundMs[0]);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void plansThatBreakOtherRulesStillKeepTheBoundDown(int seed) {
    RandomGround ground = ground(seed);
    AllPlans plans = new AllPlans(ground);
    long cheapestMs = plans.cheapestMs(0);
    long knownMs = cheapestMs == Long.MAX_VALUE ? 20_000 : cheapestMs + 400;
    LowerBound bound = raised(ground, seed, 0, knownMs);
    bound.gather(knownMs, STEPS, () -> false);
    bound.close(
        knownMs,
        1_000_000,
        () -> false,
        spotOf ->
            plans.costMs(spotOf) == Long.MAX_VALUE ? Judge.Verdict.ILLEGAL : Judge.Verdict.LEGAL);
    assertThat(bound.provenMs()).isLessThanOrEqualTo(cheapestMs);
  }

  @Test
  void closingThatMayNotLookAtAllLeavesTheBoundAsItIs() {
    RandomGround ground = ground(7);
    LowerBound bound = new LowerBound(ground, 2, 0);
    bound.gather(4000, STEPS, () -> false);
    bound.close(4000, 0, () -> false, spotOf -> Judge.Verdict.SOUND);
    assertThat(bound.provenMs()).isLessThanOrEqualTo(new AllPlans(ground).cheapestMs(0));
  }

  @Test
  void setsThatAreKnownMendAPlanWhereTooManyCount() {
    int mended = 0;
    for (int seed = 0; seed < 60; seed++) {
      RandomGround ground = ground(seed);
      AllPlans plans = new AllPlans(ground);
      int[] dearest = plans.dearest();
      long costMs = dearest.length == 0 ? 0 : plans.costMs(dearest);
      LowerBound bound = raised(ground, seed, 0, costMs);
      bound.gather(costMs, 0, () -> false);
      long afterMs =
          bound.mend(
              dearest,
              costMs,
              dearest.length == 0 ? 0 : 50_000,
              () -> false,
              spotOf ->
                  plans.costMs(spotOf) < costMs ? Judge.Verdict.SOUND : Judge.Verdict.ILLEGAL);
      assertThat(afterMs).isGreaterThanOrEqualTo(Math.min(costMs, plans.cheapestMs(0)));
      mended += afterMs < costMs ? 1 : 0;
    }
    assertThat(mended).isGreaterThan(20);
  }
}
