package skidway.shakeout;

import java.util.List;
import java.util.OptionalDouble;
import skidway.plan.Task;
import skidway.site.Spot;
import skidway.site.Zone;
import skidway.staging.Footings;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/**
 * Tells what bears a pile: the floor or the ground beneath its lowest layer, as beneath the lowest
 * bundle of a stack. Limits that it shares with others, such as joists, are left to the check of
 * the whole moment.
 */
final class PileBearing {
  private final Task task;
  private final Footings footings;

  PileBearing(Task task) {
    this.task = task;
    footings = new Footings(task);
  }

  /** Whether a pile may weigh and stand so high there. */
  boolean bears(Spot place, List<Piece> pieces, PileBottom bottom, double heightM) {
    int footing = footing(place);
    Bundle lowest = lowest(bottom);
    double slenderM = footings.mostSlender(footing) * Math.min(bottom.lengthM(), bottom.widthM());
    return footings.clearsGround(footing)
        && massKg(pieces) <= footings.mostKg(footing, lowest)
        && heightM <= slenderM;
  }

  /** The bearers under a pile that it bears. */
  BearerRow bearers(Spot place, List<Piece> pieces, PileBottom bottom) {
    return footings.underStack(footing(place), lowest(bottom), massKg(pieces));
  }

  static double massKg(List<Piece> pieces) {
    return pieces.stream().mapToDouble(p -> p.mass().highKg()).sum();
  }

  private int footing(Spot place) {
    Zone zone = task.site().zone(place.zoneId()).orElseThrow();
    return footings.of(zone);
  }

  /** The lowest layer as a bundle; only its size counts. */
  private static Bundle lowest(PileBottom bottom) {
    return new Bundle(
        "pile",
        "",
        0,
        bottom.lengthM(),
        bottom.widthM(),
        bottom.widthM(),
        OptionalDouble.empty(),
        List.of());
  }
}
