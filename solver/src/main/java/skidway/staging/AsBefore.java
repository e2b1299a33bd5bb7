package skidway.staging;

import java.util.HashMap;
import java.util.Map;
import skidway.plan.Baseline;
import skidway.plan.Effort;

/**
 * What comes of changing nothing: what lies stays, and what is still to come goes where the
 * revision before meant it to go, or, where that is not open any more, to the next best place.
 */
final class AsBefore {
  private final Occupancy occupancy;
  private final Board board;

  AsBefore(Occupancy occupancy) {
    this.occupancy = occupancy;
    this.board = occupancy.board;
  }

  void lay() {
    occupancy.layStart();
    Map<String, Integer> byId = new HashMap<>();
    for (int s = 0; s < board.spotCount(); s++) {
      byId.put(board.spots.get(s).id(), s);
    }
    Map<String, String> intended = board.task.start().intended();
    for (int b = 0; b < board.bundleCount(); b++) {
      String spotId = intended.getOrDefault(board.bundles.get(b).id(), "");
      int spot = byId.getOrDefault(spotId, Occupancy.NOWHERE);
      if (occupancy.spotOf(b) == Occupancy.NOWHERE) {
        occupancy.put(b, spot);
        if (!occupancy.legal()) {
          occupancy.take(b);
        }
      }
    }
    new RegretInsertion(occupancy).fill();
  }

  /**
   * @param sound whether it can be walked through and carried out; else it places nothing
   */
  static Baseline baseline(Occupancy occupancy, boolean sound) {
    if (!sound) {
      return new Baseline(
          Baseline.AS_BEFORE,
          "Changing nothing would shut a path or leave a bundle without a place to wait.",
          0,
          Effort.NONE);
    }
    return new Baseline(
        Baseline.AS_BEFORE,
        "What lies stays; the rest goes where the revision before meant it to go, or next to it.",
        occupancy.board.bundleCount() - occupancy.unplaced(),
        PlanWriter.effort(occupancy));
  }
}
