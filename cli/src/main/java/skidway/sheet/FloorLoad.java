package skidway.sheet;

import java.util.Optional;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.timber.Bundle;

/**
 * Works out what a stack puts on the floor beneath it: its weight over the area of its lowest
 * bundle with the reach of the bearers; a rack's over its whole footprint.
 */
final class FloorLoad {
  private static final double GRAVITY = 9.80665;
  private static final double KILO = 1000;

  private FloorLoad() {}

  static Optional<Double> kpa(StackView stack, Settings settings) {
    double weightKn = stack.massKg() * GRAVITY / KILO;
    if (stack.rack()) {
      return Optional.of(weightKn / stack.spot().footprint().areaM2());
    }
    return stack.tiers().stream()
        .findFirst()
        .flatMap(Tier::bundle)
        .map(lowest -> weightKn / areaM2(lowest, settings));
  }

  private static double areaM2(Bundle lowest, Settings settings) {
    double reachM = settings.get(Setting.BEARER_REACH);
    return lowest.lengthM() * (lowest.widthM() + 2 * reachM);
  }
}
