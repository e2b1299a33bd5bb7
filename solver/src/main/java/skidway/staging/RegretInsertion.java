package skidway.staging;

/**
 * Builds a first staging: again and again the bundle that would lose most by waiting takes its
 * cheapest spot. Bundles for which there is no spot stay without.
 */
final class RegretInsertion {
  private static final long NONE = Long.MAX_VALUE / 4;

  private final Occupancy occupancy;
  private final Board board;

  RegretInsertion(Occupancy occupancy) {
    this.occupancy = occupancy;
    this.board = occupancy.board;
  }

  /** Places what it can of the bundles that have no spot yet. */
  void fill() {
    while (true) {
      int chosen = -1;
      int chosenSpot = Occupancy.NOWHERE;
      long mostRegret = -1;
      for (int b = 0; b < board.bundleCount(); b++) {
        if (occupancy.spotOf(b) != Occupancy.NOWHERE) {
          continue;
        }
        long best = NONE;
        long second = NONE;
        int spot = Occupancy.NOWHERE;
        for (int s : board.near[b]) {
          if (board.placeMs[b][s] >= second) {
            break;
          }
          long extra = extraMs(b, s);
          if (extra < best) {
            second = best;
            best = extra;
            spot = s;
          } else if (extra < second) {
            second = extra;
          }
        }
        if (best < NONE && second - best > mostRegret) {
          mostRegret = second - best;
          chosen = b;
          chosenSpot = spot;
        }
      }
      if (chosen < 0) {
        return;
      }
      occupancy.put(chosen, chosenSpot);
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
}
