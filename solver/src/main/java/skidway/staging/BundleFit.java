package skidway.staging;

import java.util.List;
import java.util.Optional;
import skidway.limits.AreaLoad;
import skidway.limits.RackRoom;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Bundle;

/** Says which rule keeps a bundle off a spot even when it would lie there alone. */
final class BundleFit {
  private final Task task;
  private final Settings settings;
  private final Lifts lifts;

  BundleFit(Task task, Lifts lifts) {
    this.task = task;
    this.settings = task.settings();
    this.lifts = lifts;
  }

  /** The first rule that refuses, or nothing if the bundle may lie there. */
  Optional<Rule> refusal(Bundle bundle, Spot spot) {
    Optional<Rule> size =
        spot.kind() == SpotKind.RACK ? rackRefusal(bundle, spot) : stackRefusal(bundle, spot);
    if (size.isPresent()) {
      return size;
    }
    if (spot.massLimitKg().isPresent() && bundle.massKg() > spot.massLimitKg().getAsDouble()) {
      return Optional.of(Rule.SPOT_MASS);
    }
    if (!lifts.reaches(spot.footprint().centre())) {
      return Optional.of(Rule.MACHINE_REACH);
    }
    if (lifts.best(bundle, List.of(spot.footprint().centre())).isEmpty()) {
      return Optional.of(Rule.MACHINE_CAPACITY);
    }
    return Optional.empty();
  }

  private Optional<Rule> stackRefusal(Bundle bundle, Spot spot) {
    if (bundle.lengthM() > spot.footprint().lengthM() + 1e-9
        || bundle.widthM() > spot.footprint().widthM() + 1e-9) {
      return Optional.of(Rule.FITS_SPOT);
    }
    double height = bundle.heightM() + settings.get(Setting.BEARER_HEIGHT);
    if (height > settings.get(Setting.STACK_HEIGHT) + 1e-9) {
      return Optional.of(Rule.STACK_HEIGHT);
    }
    double area =
        AreaLoad.bearingM2(bundle.lengthM(), bundle.widthM(), settings.get(Setting.BEARER_REACH));
    return overloads(bundle.massKg(), area, spot) ? Optional.of(Rule.ZONE_LOAD) : Optional.empty();
  }

  private Optional<Rule> rackRefusal(Bundle bundle, Spot spot) {
    if (bundle.longestPieceM() > settings.get(Setting.RACK_PIECE_LENGTH) + 1e-9) {
      return Optional.of(Rule.RACK_LENGTH);
    }
    double floor = spot.footprint().areaM2();
    if (RackRoom.floorM2(bundle) > settings.get(Setting.RACK_PACKING) * floor + 1e-9) {
      return Optional.of(Rule.RACK_ROOM);
    }
    return overloads(bundle.massKg(), floor, spot) ? Optional.of(Rule.ZONE_LOAD) : Optional.empty();
  }

  private boolean overloads(double massKg, double areaM2, Spot spot) {
    return AreaLoad.kpa(massKg, areaM2) > allowedKpa(spot) + 1e-9;
  }

  private double allowedKpa(Spot spot) {
    return task.site().zone(spot.zoneId()).orElseThrow().allowedKpa();
  }
}
