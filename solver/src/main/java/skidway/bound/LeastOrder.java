package skidway.bound;

/**
 * What bundles add to a stack at least by lying on each other, in whatever order: the shortest path
 * over subsets when every bundle pays for the dearest of those beneath it ({@link Ground#onTopMs}).
 * Bundles come one after the other, as a set grows, and the last goes first.
 */
final class LeastOrder {
  /** Of larger sets the first so many are told; what joins them only adds. */
  private static final int MOST = 6;

  /** More than any stack costs, and small enough to be added up. */
  private static final long NEVER = 1L << 50;

  private final Ground ground;

  /** By subset of those that came, a bit each. */
  private final long[] leastMs = new long[1 << MOST];

  /** By bundle and subset: the dearest of the subset to lie on. */
  private final long[][] onTopMs = new long[MOST][1 << MOST];

  private final int[] bundles = new int[MOST];

  LeastOrder(Ground ground) {
    this.ground = ground;
  }

  /** Of the first so many that came. */
  long ms(int k) {
    return leastMs[(1 << Math.min(k, MOST)) - 1];
  }

  /**
   * Lets a bundle come, in the place of those that came after the first {@code k}.
   *
   * @return what they add at least, or {@link Ground#REFUSED} if they lie in no order
   */
  long with(int bundle, int k, int spot) {
    if (k >= MOST) {
      return ms(k);
    }
    bundles[k] = bundle;
    int last = 1 << k;
    takeOnTop(k, spot);
    for (int others = 0; others < last; others++) {
      long least = leastMs[others] + onTopMs[k][others];
      for (int left = others; left != 0; left &= left - 1) {
        int u = Integer.numberOfTrailingZeros(left);
        int below = last | (others ^ 1 << u);
        least = Math.min(least, leastMs[below] + onTopMs[u][below]);
      }
      leastMs[last | others] = Math.min(NEVER, least);
    }
    return ms(k + 1) >= NEVER ? Ground.REFUSED : ms(k + 1);
  }

  private void takeOnTop(int k, int spot) {
    int last = 1 << k;
    for (int u = 0; u < k; u++) {
      long onLast = told(ground.onTopMs(bundles[k], bundles[u], spot));
      for (int others = 0; others < last; others++) {
        onTopMs[u][last | others] = Math.max(onLast, onTopMs[u][others]);
      }
      onTopMs[k][1 << u] = told(ground.onTopMs(bundles[u], bundles[k], spot));
    }
    for (int some = 1; some < last; some++) {
      onTopMs[k][some] =
          Math.max(onTopMs[k][some & some - 1], onTopMs[k][Integer.lowestOneBit(some)]);
    }
  }

  private static long told(long ms) {
    return ms == Ground.REFUSED ? NEVER : ms;
  }
}
