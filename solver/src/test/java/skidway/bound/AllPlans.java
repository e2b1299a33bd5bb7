package skidway.bound;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Looks at every way to place a few bundles, the plain way. */
final class AllPlans {
  private static final int NOWHERE = -1;

  private final Ground ground;

  AllPlans(Ground ground) {
    this.ground = ground;
  }

  /** The least that a plan costs that leaves out no more bundles; the highest number if none is. */
  long cheapestMs(int mayLeave) {
    int ways = ground.spots() + 1;
    long least = Long.MAX_VALUE;
    for (int code = 0; code < Math.pow(ways, ground.bundles()); code++) {
      int[] spotOf = new int[ground.bundles()];
      for (int b = 0, rest = code; b < spotOf.length; b++, rest /= ways) {
        spotOf[b] = rest % ways - 1;
      }
      if (Arrays.stream(spotOf).filter(s -> s == NOWHERE).count() <= mayLeave) {
        least = Math.min(least, costMs(spotOf));
      }
    }
    return least;
  }

  /** The spot of each bundle in the dearest plan that leaves out none; empty if there is none. */
  int[] dearest() {
    int[] dearest = {};
    for (int code = 0; code < Math.pow(ground.spots(), ground.bundles()); code++) {
      int[] spotOf = new int[ground.bundles()];
      for (int b = 0, rest = code; b < spotOf.length; b++, rest /= ground.spots()) {
        spotOf[b] = rest % ground.spots();
      }
      long costMs = costMs(spotOf);
      if (costMs < Long.MAX_VALUE && (dearest.length == 0 || costMs > costMs(dearest))) {
        dearest = spotOf;
      }
    }
    return dearest;
  }

  /** What a plan costs; the highest number if it breaks a rule. */
  long costMs(int[] spotOf) {
    long sum = 0;
    double[] used = new double[ground.sums()];
    for (int s = 0; s < ground.spots(); s++) {
      int[] set = on(s, spotOf);
      if (set.length == 0) {
        continue;
      }
      long stackMs = ground.stackMs(set, set.length, s);
      if (stackMs == Ground.REFUSED || isExcluded(s, set, spotOf)) {
        return Long.MAX_VALUE;
      }
      sum += stackMs;
      for (int b : set) {
        if (ground.placeMs(b, s) == Ground.REFUSED) {
          return Long.MAX_VALUE;
        }
        sum += ground.placeMs(b, s);
      }
      Ground.Load load = ground.load(s, ground.lowest(set, set.length, s));
      for (int i = 0; i < used.length; i++) {
        used[load.sums[i]] += load.perKg[i] * Arrays.stream(set).mapToDouble(ground::massKg).sum();
      }
    }
    return Arrays.stream(used).allMatch(u -> u <= 1) ? sum : Long.MAX_VALUE;
  }

  private static int[] on(int spot, int[] spotOf) {
    return IntStream.range(0, spotOf.length).filter(b -> spotOf[b] == spot).toArray();
  }

  /** Whether a spot that is in the way is used while this one is. */
  private boolean isExcluded(int spot, int[] set, int[] spotOf) {
    return Arrays.stream(ground.excludes(spot))
        .anyMatch(other -> (when(set) & when(on(other, spotOf))) != 0);
  }

  private long when(int[] set) {
    return Arrays.stream(set).mapToLong(ground::there).reduce(0, (a, b) -> a | b);
  }
}
