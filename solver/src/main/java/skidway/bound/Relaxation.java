package skidway.bound;

import java.util.Arrays;
import java.util.List;

/**
 * What is left of the problem when bundles are counted by their worth, spots that exclude each
 * other pay rent and heavy stacks pay toll: every spot takes the set it gains most by. Its value is
 * below the cost of every plan, whatever the prices.
 */
final class Relaxation {
  /** Sets that are always looked at for one spot, however few are left to look at. */
  static final int FOR_A_SPOT = 20_000;

  private final CheapestStack cheapest;
  private final Ground ground;
  private final int groups;
  private final int moments;
  private final int mayLeave;

  Relaxation(Ground ground, Cliques cliques, Openings openings, int moments, int mayLeave) {
    this.ground = ground;
    this.groups = cliques.count();
    this.moments = moments;
    this.mayLeave = mayLeave;
    this.cheapest = new CheapestStack(ground, cliques, openings, moments);
  }

  /** Prices at which every bundle is worth what it costs at least. */
  Prices start(Openings openings) {
    Prices prices = new Prices(ground.bundles(), groups, moments, ground.sums());
    Arrays.fill(prices.ms, 0, ground.bundles(), Long.MAX_VALUE);
    for (int s = 0; s < openings.bundles.length; s++) {
      for (int i = 0; i < openings.bundles[s].length; i++) {
        int b = openings.bundles[s][i];
        prices.ms[b] = Math.min(prices.ms[b], openings.leastMs[s][i]);
      }
    }
    for (int b = 0; b < ground.bundles(); b++) {
      prices.ms[b] = prices.ms[b] == Long.MAX_VALUE ? 0 : prices.ms[b];
    }
    return prices;
  }

  /** How many sets were looked at so far. */
  long steps() {
    return cheapest.steps();
  }

  /**
   * Tells every set on a spot that is below a value at some prices.
   *
   * @param mostSteps sets to look at
   * @return whether that was all
   */
  boolean tellBelow(
      int spot, Prices prices, long belowMs, long mostSteps, CheapestStack.Sink sink) {
    return cheapest.tellBelow(spot, prices, belowMs, mostSteps, sink);
  }

  /**
   * What a spot gains at most: never positive.
   *
   * @param mostSteps sets to look at before a bound of it must do
   */
  long gainMs(int spot, Prices prices, long mostSteps) {
    return cheapest.price(spot, prices, mostSteps);
  }

  /** The sets met when a spot was asked last, each cheaper than the one before. */
  List<int[]> found() {
    return cheapest.found();
  }

  /** What follows from the gains of all spots. */
  Answer answer(Prices prices, long[] gainMs) {
    return new Answer(prices, gainMs, mayLeave);
  }

  /** Asks all spots. */
  Answer ask(Prices prices, long mostSteps) {
    long[] gainMs = new long[ground.spots()];
    Arrays.setAll(gainMs, spot -> gainMs(spot, prices, mostSteps));
    return answer(prices, gainMs);
  }
}
