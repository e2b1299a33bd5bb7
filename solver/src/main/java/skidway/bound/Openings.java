package skidway.bound;

import java.util.stream.IntStream;

/** For each spot the bundles that may lie there, and what each costs there at least. */
final class Openings {
  final int[][] bundles;

  /** In step with {@link #bundles}: its price there and its own share of any stack. */
  final long[][] leastMs;

  private Openings(int[][] bundles, long[][] leastMs) {
    this.bundles = bundles;
    this.leastMs = leastMs;
  }

  /** Whether a bundle may lie on a spot. */
  interface Filter {
    boolean open(int bundle, int spot);
  }

  static Openings of(Ground ground, Filter filter) {
    int[][] bundles = new int[ground.spots()][];
    long[][] leastMs = new long[ground.spots()][];
    for (int spot = 0; spot < bundles.length; spot++) {
      int s = spot;
      bundles[s] =
          IntStream.range(0, ground.bundles())
              .filter(b -> ground.placeMs(b, s) != Ground.REFUSED && filter.open(b, s))
              .toArray();
      leastMs[s] =
          IntStream.of(bundles[s])
              .mapToLong(b -> ground.placeMs(b, s) + ground.leastInStackMs(b, s))
              .toArray();
    }
    return new Openings(bundles, leastMs);
  }
}
