package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import skidway.limits.AreaLoad;
import skidway.limits.Bearers;
import skidway.limits.Slenderness;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.site.Zone;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/**
 * What a stack may weigh and how slender it may be, by the kind of footing it has: a deck with its
 * posted allowance, or ground with its allowed pressure and slope. Spots of the same kind share a
 * footing number.
 */
public final class Footings {
  private record Footing(boolean deck, double allowedKpa, double slope) {
    static Footing of(Zone zone) {
      double slope = zone instanceof Yard yard ? yard.slope().orElse(0) : 0;
      return new Footing(zone instanceof Deck, zone.allowedKpa(), slope);
    }
  }

  private final Settings settings;
  private final Bearers bearers;
  private final List<Footing> footings;

  public Footings(Task task) {
    settings = task.settings();
    bearers =
        new Bearers(
            settings.get(Setting.BEARER_WIDTH),
            settings.get(Setting.BEARER_SPACING),
            settings.get(Setting.BEARER_CLOSEST),
            // The bearers of two neighbours share the gap between them.
            Math.min(settings.get(Setting.BEARER_PROUD), settings.get(Setting.STACK_GAP) / 2));
    footings = task.site().zones().stream().map(Footing::of).distinct().toList();
  }

  int count() {
    return footings.size();
  }

  public int of(Zone zone) {
    return footings.indexOf(Footing.of(zone));
  }

  /** Most that a stack may weigh whose lowest bundle this is, kg. */
  public double mostKg(int footing, Bundle lowest) {
    Footing on = footings.get(footing);
    if (on.deck()) {
      double areaM2 =
          AreaLoad.bearingM2(lowest.lengthM(), lowest.widthM(), settings.get(Setting.BEARER_REACH));
      return AreaLoad.massKg(on.allowedKpa(), areaM2);
    }
    return bearers.mostOnGroundKg(lowest.lengthM(), lowest.widthM(), on.allowedKpa());
  }

  /** Most that a stack may weigh whose lowest bundle lies on these bearers already, kg. */
  double mostKg(int footing, Bundle lowest, BearerRow row) {
    double rowKg =
        isDeck(footing)
            ? AreaLoad.massKg(allowedKpa(footing), lowest.lengthM() * row.lengthM())
            : bearers.mostOnGroundKg(row, lowest.lengthM(), allowedKpa(footing));
    return Math.min(mostKg(footing, lowest), rowKg);
  }

  /** Most that pieces on end may weigh in a rack, kg; on ground it stands on two rails. */
  double mostInRackKg(int footing, Spot rack) {
    Footing on = footings.get(footing);
    double areaM2 =
        on.deck()
            ? rack.footprint().areaM2()
            : 2 * settings.get(Setting.BEARER_WIDTH) * rack.footprint().lengthM();
    return AreaLoad.massKg(on.allowedKpa(), areaM2);
  }

  /** How many times as high as a bundle is wide a stack may be above the bundle's underside. */
  public double mostSlender(int footing) {
    return Slenderness.mostHeightToWidth(
        settings.get(Setting.HEIGHT_TO_WIDTH), footings.get(footing).slope());
  }

  double allowedKpa(int footing) {
    return footings.get(footing).allowedKpa();
  }

  boolean isDeck(int footing) {
    return footings.get(footing).deck();
  }

  /** Whether bearers lift a stack high enough off the ground; a deck needs no clearance. */
  public boolean clearsGround(int footing) {
    return isDeck(footing)
        || settings.get(Setting.BEARER_HEIGHT) >= settings.get(Setting.GROUND_CLEARANCE) - 1e-9;
  }

  /** The bearers to lay under the lowest bundle of a stack that weighs so much in the end. */
  public BearerRow underStack(int footing, Bundle lowest, double stackKg) {
    if (isDeck(footing)) {
      return bearers.fewest(lowest.lengthM(), lowest.widthM(), settings.get(Setting.BEARER_REACH));
    }
    return bearers
        .onGround(lowest.lengthM(), lowest.widthM(), stackKg, footings.get(footing).allowedKpa())
        .orElseThrow(
            () -> new IllegalStateException("No bearers carry the stack on " + lowest.id()));
  }

  /** Whether bearers are near enough to each other. */
  public boolean maySpace(BearerRow row) {
    return row.spacingM() <= settings.get(Setting.BEARER_SPACING) + 1e-9;
  }

  /** The bearers between a bundle and the one beneath it. */
  BearerRow betweenTiers(Bundle upper) {
    return bearers.fewest(upper.lengthM(), upper.widthM(), 0);
  }

  /** For each footing the most that a stack on each bundle may weigh, kg. */
  double[][] mostKg(List<Bundle> lowest) {
    List<double[]> rows = new ArrayList<>();
    for (int f = 0; f < count(); f++) {
      int footing = f;
      rows.add(lowest.stream().mapToDouble(b -> mostKg(footing, b)).toArray());
    }
    return rows.toArray(double[][]::new);
  }
}
