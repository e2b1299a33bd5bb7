package skidway.staging;

/** Takes every bundle that would be better off elsewhere there, until none would. */
final class Polish {
  private final Occupancy occupancy;
  private final Board board;

  Polish(Occupancy occupancy) {
    this.occupancy = occupancy;
    this.board = occupancy.board;
  }

  void run() {
    boolean better = true;
    while (better) {
      better = false;
      for (int b = 0; b < board.bundleCount(); b++) {
        better |= relocate(b);
      }
    }
  }

  private boolean relocate(int bundle) {
    int from = occupancy.spotOf(bundle);
    if (from == Occupancy.NOWHERE) {
      return false;
    }
    long planMs = occupancy.costMs();
    occupancy.take(bundle);
    long bestMs = planMs;
    int best = from;
    for (int s : board.near[bundle]) {
      if (occupancy.costMs() + board.placeMs[bundle][s] >= bestMs) {
        break;
      }
      if (s == from || occupancy.blocked(bundle, s)) {
        continue;
      }
      occupancy.put(bundle, s);
      if (occupancy.legal() && occupancy.costMs() < bestMs) {
        bestMs = occupancy.costMs();
        best = s;
      }
      occupancy.take(bundle);
    }
    occupancy.put(bundle, best);
    return best != from;
  }
}
