package skidway.audit;

import java.util.OptionalDouble;
import skidway.rules.Setting;
import skidway.site.OverheadLine;

/** How far everything stays away from an overhead line: 29 CFR 1926.1408 Table A, or its owner. */
final class LineClearance {
  private static final double VOLTS_PER_KV = 1000;

  private final Scene scene;

  LineClearance(Scene scene) {
    this.scene = scene;
  }

  /** Metres; above 1000 kV only the owner can say. */
  OptionalDouble metres(OverheadLine line) {
    double kilovolts = line.volts() / VOLTS_PER_KV;
    if (!(kilovolts <= 1000)) {
      return line.clearanceM();
    }
    double tableM = scene.setting(band(kilovolts));
    return OptionalDouble.of(Math.max(tableM, line.clearanceM().orElse(tableM)));
  }

  private static Setting band(double kilovolts) {
    if (kilovolts <= 50) {
      return Setting.LINE_TO_50_KV;
    }
    if (kilovolts <= 200) {
      return Setting.LINE_TO_200_KV;
    }
    if (kilovolts <= 350) {
      return Setting.LINE_TO_350_KV;
    }
    if (kilovolts <= 500) {
      return Setting.LINE_TO_500_KV;
    }
    return kilovolts <= 750 ? Setting.LINE_TO_750_KV : Setting.LINE_TO_1000_KV;
  }
}
