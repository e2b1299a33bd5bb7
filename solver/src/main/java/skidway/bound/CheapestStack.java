package skidway.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the set of bundles that a spot gains most by when every bundle has a worth: branch and
 * bound over sets, the most worth for its room first. Exact as long as its steps last; after that
 * it tells a value that no set is below.
 */
final class CheapestStack {
  private static final double UNKNOWN = -1;

  /** Tolls are sums of fractions; by so much they are told too low rather than too high. */
  private static final double SAFE = 1 - 1e-12;

  /** Told of sets of bundles. */
  interface Sink {
    /**
     * Takes a set and what it costs at the prices asked for.
     *
     * @param set growing
     */
    void set(int[] set, long valueMs);
  }

  private @Nullable Sink sink;
  private final Ground ground;
  private final Cliques cliques;
  private final Openings openings;
  private long steps;

  /** What the spot's groups take at each moment. */
  private final long[] rentAt;

  /** What a kilogram costs, by the size of the lowest bundle. */
  private final double[] tollPerKg;

  private double leastToll;
  private final int moments;
  private final LeastOrder order;
  private final Wanted wanted;
  private int spot;
  private long stepsLeft;
  private final int[] set;
  private final int[] sorted;
  private long best;
  private long openBound;
  private final List<int[]> found = new ArrayList<>();

  CheapestStack(Ground ground, Cliques cliques, Openings openings, int moments) {
    this.ground = ground;
    this.cliques = cliques;
    this.openings = openings;
    this.moments = moments;
    this.order = new LeastOrder(ground);
    this.wanted = new Wanted(ground);
    int n = ground.bundles();
    rentAt = new long[moments];
    tollPerKg = new double[n];
    set = new int[n];
    sorted = new int[n];
  }

  /** How many sets were looked at so far. */
  long steps() {
    return steps;
  }

  /**
   * No set of bundles on a spot costs less than this, its bundles' worth taken off and rent added;
   * 0 if leaving it empty is best.
   *
   * @param mostSteps sets to look at before the spot is told by a bound only
   */
  long price(int atSpot, Prices prices, long mostSteps) {
    sink = null;
    look(atSpot, prices, 0, mostSteps);
    return Math.min(best, openBound);
  }

  /** The sets met when a spot was priced last, growing, each cheaper than the one before. */
  List<int[]> found() {
    return found;
  }

  /**
   * Tells every set on a spot whose value is below a limit.
   *
   * @return whether the steps lasted
   */
  boolean tellBelow(int atSpot, Prices prices, long limitMs, long mostSteps, Sink all) {
    sink = all;
    look(atSpot, prices, limitMs, mostSteps);
    return openBound >= limitMs;
  }

  private void look(int atSpot, Prices prices, long limitMs, long mostSteps) {
    spot = atSpot;
    best = limitMs;
    openBound = limitMs;
    found.clear();
    stepsLeft = mostSteps;
    long leastRent = takeRent(prices);
    takeToll(prices);
    gather(prices.ms, leastRent);
    if (leastRent + wanted.fill(0, 0) + wanted.lessMs(0) < best) {
      extend(0, 0, 0, 0, 0, 0);
    }
  }

  private long takeRent(Prices prices) {
    Arrays.fill(rentAt, 0);
    for (int g : cliques.ofSpot(spot)) {
      for (int m = 0; m < moments; m++) {
        rentAt[m] += prices.ms[prices.rent(g, m)];
      }
    }
    long least = Long.MAX_VALUE;
    for (long rent : rentAt) {
      least = Math.min(least, rent);
    }
    return least;
  }

  /** What a kilogram costs by the size of what is lowest, and at least. */
  private void takeToll(Prices prices) {
    leastToll = 0;
    if (ground.sums() == 0) {
      return;
    }
    Arrays.fill(tollPerKg, UNKNOWN);
    leastToll = Double.POSITIVE_INFINITY;
    for (int b : openings.bundles[spot]) {
      int kind = ground.sizeOf(b);
      if (tollPerKg[kind] == UNKNOWN) {
        Ground.Load load = ground.load(spot, b);
        double sum = 0;
        for (int i = 0; i < load.sums.length; i++) {
          sum += load.perKg[i] * prices.ms[prices.toll(load.sums[i])];
        }
        tollPerKg[kind] = sum * SAFE;
      }
      leastToll = Math.min(leastToll, tollPerKg[kind]);
    }
    leastToll = leastToll == Double.POSITIVE_INFINITY ? 0 : leastToll;
  }

  private long leastToll(int bundle) {
    return leastToll == 0 ? 0 : (long) (leastToll * ground.massKg(bundle));
  }

  /** Keeps the bundles that can be part of a set that is worth while. */
  private void gather(long[] worth, long leastRent) {
    wanted.forSpot(spot);
    int[] open = openings.bundles[spot];
    long[] leastMs = openings.leastMs[spot];
    steps += 1 + open.length / 16;
    long all = leastRent;
    for (int i = 0; i < open.length; i++) {
      all += Math.min(0, leastMs[i] + leastToll(open[i]) - worth[open[i]]);
    }
    if (all >= best) {
      return;
    }
    for (int i = 0; i < open.length; i++) {
      long ms = leastMs[i] + leastToll(open[i]) - worth[open[i]];
      if (Math.max(0, ms) < best - all) {
        wanted.add(open[i], ms);
      }
    }
    wanted.sort();
  }

  /**
   * Adds each candidate from one on to the set.
   *
   * @param sum of the set's reduced prices
   * @param onTop the least that a bundle of the set costs for lying on another; 0 if there is none
   */
  private void extend(int from, int k, long sum, long union, double used, long onTop) {
    long soFar = sum + order.ms(k) + rent(union);
    long less = wanted.lessMs(onTop);
    for (int i = from; i < wanted.count(); i++) {
      long bound = soFar + less + wanted.least(i, used);
      if (bound >= best) {
        return;
      }
      if (stepsLeft <= 0) {
        openBound = Math.min(openBound, bound);
        return;
      }
      if (!wanted.fits(i, used)) {
        continue;
      }
      long with = union | ground.there(wanted.bundle(i));
      long next = sum + wanted.ms(i) + rent(with);
      long nextOnTop = k == 0 ? wanted.onTopMs(i) : Math.min(onTop, wanted.onTopMs(i));
      double nextUsed = wanted.with(i, used);
      long rest = wanted.fill(i + 1, nextUsed);
      long restOnTop = Math.min(0, rest + wanted.lessMs(nextOnTop));
      long atLeast =
          k == 0 ? restOnTop : order.ms(k) + wanted.onTopMs(i) + less + Math.min(0, rest);
      if (next + atLeast >= best) {
        continue;
      }
      long together = order.with(wanted.bundle(i), k, spot);
      if (together == Ground.REFUSED || next + together + restOnTop >= best) {
        continue;
      }
      set[k] = wanted.bundle(i);
      stepsLeft--;
      steps++;
      if (priced(k + 1, next, together) && !wanted.isFull(nextUsed)) {
        extend(i + 1, k + 1, sum + wanted.ms(i), with, nextUsed, nextOnTop);
      }
    }
  }

  private long rent(long union) {
    if (moments == 1) {
      return union == 0 ? 0 : rentAt[0];
    }
    long sum = 0;
    for (long left = union; left != 0; left &= left - 1) {
      sum += rentAt[Long.numberOfTrailingZeros(left)];
    }
    return sum;
  }

  /**
   * Prices a set, if it can be the best; whether sets that contain it may be legal.
   *
   * @param together what its bundles add at least by lying on each other
   */
  private boolean priced(int k, long withoutStacking, long together) {
    sort(k);
    if (!ground.mayGrow(sorted, k, spot)) {
      return false;
    }
    if (withoutStacking + together >= best) {
      return true;
    }
    long stackMs = ground.stackMs(sorted, k, spot);
    if (stackMs != Ground.REFUSED) {
      long least = 0;
      long tolled = 0;
      double massKg = 0;
      for (int i = 0; i < k; i++) {
        least += ground.leastInStackMs(sorted[i], spot);
        tolled += leastToll(sorted[i]);
        massKg += ground.massKg(sorted[i]);
      }
      long value = withoutStacking + stackMs - least + moreToll(k, massKg, tolled);
      if (value < best && sink != null) {
        sink.set(Arrays.copyOf(sorted, k), value);
      } else if (value < best) {
        best = value;
        found.add(Arrays.copyOf(sorted, k));
      }
    }
    return true;
  }

  /** Puts the set into growing order. */
  private void sort(int k) {
    for (int i = 0; i < k; i++) {
      int at = i;
      while (at > 0 && sorted[at - 1] > set[i]) {
        sorted[at] = sorted[at - 1];
        at--;
      }
      sorted[at] = set[i];
    }
  }

  private long moreToll(int k, double massKg, long tolled) {
    if (ground.sums() == 0) {
      return 0;
    }
    double toll = massKg * tollPerKg[ground.sizeOf(ground.lowest(sorted, k, spot))];
    return Math.max(0, (long) toll - tolled);
  }
}
