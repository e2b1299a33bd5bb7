package skidway.bound;

import java.util.Arrays;

/**
 * What is left of the problem when bundles are counted by their worth, spots that exclude each
 * other pay rent and heavy stacks pay toll: every spot takes the set it gains most by. Its value is
 * below the cost of every plan, whatever the prices.
 */
final class Relaxation implements Lagrangian {
  private final Cliques cliques;
  private final CheapestStack cheapest;
  private final Ground ground;
  private final int moments;
  private final int mayLeave;

  /** What each spot gains in the last answer: never positive. */
  private final long[] gainMs;

  Relaxation(Ground ground, Cliques cliques, Openings openings, int moments, int mayLeave) {
    this.ground = ground;
    this.cliques = cliques;
    this.moments = moments;
    this.mayLeave = mayLeave;
    this.cheapest = new CheapestStack(ground, cliques, openings, moments);
    this.gainMs = new long[ground.spots()];
  }

  /** Prices at which every bundle is worth what it costs at least. */
  Prices start(Openings openings) {
    Prices prices = new Prices(ground.bundles(), cliques.count(), moments, ground.sums());
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

  @Override
  public long steps() {
    return cheapest.steps();
  }

  /**
   * Tells every set on a spot that a plan below some cost may have, and its value at these prices.
   *
   * @param belowMs the cost, less the value of the relaxation that was asked last
   * @return whether that was all
   */
  boolean tellBelow(int spot, Prices prices, long belowMs, CheapestStack.Sink sink) {
    return cheapest.tellBelow(spot, prices, gainMs[spot] + belowMs, sink);
  }

  /** What a spot gains at the prices that were asked last: never positive. */
  long gainMs(int spot) {
    return gainMs[spot];
  }

  @Override
  public long valueMs(Prices prices, double[] off) {
    Arrays.fill(off, 0, ground.bundles(), 1);
    Arrays.fill(off, ground.bundles(), off.length, -1);
    for (int b : prices.leftOut(mayLeave)) {
      off[b]--;
    }
    long value = prices.beforeSpotsMs(mayLeave);
    for (int s = 0; s < gainMs.length; s++) {
      gainMs[s] = cheapest.price(s, prices);
      value += gainMs[s];
      int[] set = cheapest.bestSet();
      if (set.length > 0) {
        count(set, s, prices, off);
      }
    }
    return value;
  }

  private void count(int[] set, int spot, Prices prices, double[] off) {
    long union = 0;
    double massKg = 0;
    for (int b : set) {
      off[b]--;
      union |= ground.there(b);
      massKg += ground.massKg(b);
    }
    cliques.countUse(spot, union, prices, off);
    if (ground.sums() > 0) {
      Ground.Load load = ground.load(spot, ground.lowest(set, set.length, spot));
      for (int i = 0; i < load.sums.length; i++) {
        off[prices.toll(load.sums[i])] += load.perKg[i] * massKg;
      }
    }
  }
}
