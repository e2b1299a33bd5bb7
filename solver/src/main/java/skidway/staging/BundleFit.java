package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import skidway.limits.AreaLoad;
import skidway.limits.RackRoom;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Bundle;

/** Says which rules keep a bundle off a spot even when it would lie there alone. */
final class BundleFit {
  private final Task task;
  private final Settings settings;
  private final Lifts lifts;

  BundleFit(Task task, Lifts lifts) {
    this.task = task;
    this.settings = task.settings();
    this.lifts = lifts;
  }

  /**
   * All rules that refuse, in their order; none if the bundle may lie there.
   *
   * @param massKg of the bundle, worked out once by the caller
   */
  List<Rule> refusals(Bundle bundle, double massKg, Spot spot) {
    List<Rule> refusals = new ArrayList<>();
    if (spot.kind() == SpotKind.RACK) {
      inRack(bundle, massKg, spot, refusals);
    } else {
      inStack(bundle, massKg, spot, refusals);
    }
    OptionalDouble limitKg = spot.massLimitKg();
    refuse(limitKg.isPresent() && massKg > limitKg.getAsDouble(), Rule.SPOT_MASS, refusals);
    if (!lifts.reaches(spot.footprint().centre())) {
      refusals.add(Rule.MACHINE_REACH);
    } else {
      boolean lifted = lifts.offTruck(bundle, massKg, spot.footprint().centre()).isPresent();
      refuse(!lifted, Rule.MACHINE_CAPACITY, refusals);
    }
    return refusals;
  }

  private void inStack(Bundle bundle, double massKg, Spot spot, List<Rule> refusals) {
    boolean larger =
        bundle.lengthM() > spot.footprint().lengthM() + 1e-9
            || bundle.widthM() > spot.footprint().widthM() + 1e-9;
    refuse(larger, Rule.FITS_SPOT, refusals);
    double heightM = bundle.heightM() + settings.get(Setting.BEARER_HEIGHT);
    refuse(heightM > settings.get(Setting.STACK_HEIGHT) + 1e-9, Rule.STACK_HEIGHT, refusals);
    double areaM2 =
        AreaLoad.bearingM2(bundle.lengthM(), bundle.widthM(), settings.get(Setting.BEARER_REACH));
    refuse(overloads(massKg, areaM2, spot), Rule.ZONE_LOAD, refusals);
  }

  private void inRack(Bundle bundle, double massKg, Spot spot, List<Rule> refusals) {
    double longestM = settings.get(Setting.RACK_PIECE_LENGTH);
    refuse(bundle.longestPieceM() > longestM + 1e-9, Rule.RACK_LENGTH, refusals);
    double floorM2 = spot.footprint().areaM2();
    double packedM2 = settings.get(Setting.RACK_PACKING) * floorM2;
    refuse(RackRoom.floorM2(bundle) > packedM2 + 1e-9, Rule.RACK_ROOM, refusals);
    refuse(overloads(massKg, floorM2, spot), Rule.ZONE_LOAD, refusals);
  }

  private boolean overloads(double massKg, double areaM2, Spot spot) {
    double allowedKpa = task.site().zone(spot.zoneId()).orElseThrow().allowedKpa();
    return AreaLoad.kpa(massKg, areaM2) > allowedKpa + 1e-9;
  }

  private static void refuse(boolean broken, Rule rule, List<Rule> refusals) {
    if (broken) {
      refusals.add(rule);
    }
  }
}
