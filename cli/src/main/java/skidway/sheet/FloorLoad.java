package skidway.sheet;

import java.util.Optional;
import skidway.limits.AreaLoad;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.timber.Bundle;

/**
 * Works out what a stack puts on the floor beneath it: its weight over the area of its lowest
 * bundle with the reach of the bearers; a rack's over its whole footprint.
 */
final class FloorLoad {
  private FloorLoad() {}

  static Optional<Double> kpa(StackView stack, Settings settings) {
    if (stack.rack()) {
      return Optional.of(AreaLoad.kpa(stack.massKg(), stack.spot().footprint().areaM2()));
    }
    return stack.tiers().stream()
        .findFirst()
        .flatMap(Tier::bundle)
        .map(lowest -> AreaLoad.kpa(stack.massKg(), areaM2(lowest, settings)));
  }

  private static double areaM2(Bundle lowest, Settings settings) {
    double reachM = settings.get(Setting.BEARER_REACH);
    return AreaLoad.bearingM2(lowest.lengthM(), lowest.widthM(), reachM);
  }
}
