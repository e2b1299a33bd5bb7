package skidway.staging;

import java.util.Arrays;

/**
 * Builds a first staging: again and again the bundle that would lose most by waiting takes its
 * cheapest spot. Bundles for which there is no spot stay without.
 *
 * <p>What a bundle would take is remembered until somebody else's spot can have changed it, which
 * gives the same staging as asking every bundle anew each time.
 */
final class RegretInsertion {
  private static final long NONE = Long.MAX_VALUE / 4;

  private final Occupancy occupancy;
  private final Board board;

  /** What each bundle adds to the cost on its cheapest spot and on its second; NONE without one. */
  private final long[] bestMs;

  private final long[] secondMs;
  private final int[] best;
  private final int[] second;
  private final boolean[] known;

  RegretInsertion(Occupancy occupancy) {
    this.occupancy = occupancy;
    this.board = occupancy.board;
    int n = board.bundleCount();
    bestMs = new long[n];
    secondMs = new long[n];
    best = new int[n];
    second = new int[n];
    known = new boolean[n];
  }

  /** Places what it can of the bundles that have no spot yet. */
  void fill() {
    Arrays.fill(known, false);
    for (int chosen = mostRegret(); chosen >= 0; chosen = mostRegret()) {
      occupancy.put(chosen, best[chosen]);
      forgetAfter(best[chosen]);
    }
  }

  /** The bundle that would lose most by waiting; -1 if none can be placed. */
  private int mostRegret() {
    int chosen = -1;
    long most = -1;
    for (int b = 0; b < board.bundleCount(); b++) {
      if (occupancy.spotOf(b) != Occupancy.NOWHERE) {
        continue;
      }
      if (!known[b]) {
        look(b);
      }
      if (bestMs[b] < NONE && secondMs[b] - bestMs[b] > most) {
        most = secondMs[b] - bestMs[b];
        chosen = b;
      }
    }
    return chosen;
  }

  private void look(int b) {
    bestMs[b] = NONE;
    secondMs[b] = NONE;
    best[b] = Occupancy.NOWHERE;
    second[b] = Occupancy.NOWHERE;
    known[b] = true;
    for (int s : board.near[b]) {
      if (board.placeMs[b][s] >= secondMs[b]) {
        return;
      }
      long extra = extraMs(b, s);
      if (extra < bestMs[b]) {
        secondMs[b] = bestMs[b];
        second[b] = best[b];
        bestMs[b] = extra;
        best[b] = s;
      } else if (extra < secondMs[b]) {
        secondMs[b] = extra;
        second[b] = s;
      }
    }
  }

  /** What a bundle adds to the cost on a spot, or NONE where it may not lie now. */
  private long extraMs(int bundle, int spot) {
    if (occupancy.blocked(bundle, spot)) {
      return NONE;
    }
    long before = occupancy.costMs();
    occupancy.put(bundle, spot);
    long extra = occupancy.legal() ? occupancy.costMs() - before : NONE;
    occupancy.take(bundle);
    return extra;
  }

  /** Forgets what a bundle just put onto a spot can have changed. */
  private void forgetAfter(int spot) {
    if (occupancy.changesFarOff(spot)) {
      Arrays.fill(known, false);
      return;
    }
    for (int b = 0; b < board.bundleCount(); b++) {
      known[b] &= !concerns(b, spot);
    }
  }

  private boolean concerns(int b, int spot) {
    long ms = board.placeMs[b][spot];
    return spot == best[b]
        || spot == second[b]
        || (ms != Board.REFUSED && ms < secondMs[b])
        || isShutBy(spot, best[b])
        || isShutBy(spot, second[b]);
  }

  private boolean isShutBy(int used, int spot) {
    return spot != Occupancy.NOWHERE && board.exclude(used, spot);
  }
}
