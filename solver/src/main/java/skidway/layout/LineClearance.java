package skidway.layout;

import java.util.Optional;
import skidway.limits.LineBand;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.OverheadLine;

/**
 * How far everything stays from an overhead line: what the table asks for its voltage, and never
 * less than what its owner asks (29 CFR 1926.1408 Table A). Above the table only the owner knows.
 */
public final class LineClearance {
  private LineClearance() {}

  /** Metres; infinite above the table as long as the owner has not said. */
  public static double metres(OverheadLine line, Settings settings) {
    return setting(line.volts())
        .map(setting -> Math.max(settings.get(setting), line.clearanceM().orElse(0)))
        .orElseGet(() -> line.clearanceM().orElse(Double.POSITIVE_INFINITY));
  }

  /** The setting that holds the clearance of a voltage; none above the table. */
  public static Optional<Setting> setting(double volts) {
    return LineBand.of(volts)
        .map(
            band ->
                switch (band) {
                  case TO_50_KV -> Setting.LINE_TO_50_KV;
                  case TO_200_KV -> Setting.LINE_TO_200_KV;
                  case TO_350_KV -> Setting.LINE_TO_350_KV;
                  case TO_500_KV -> Setting.LINE_TO_500_KV;
                  case TO_750_KV -> Setting.LINE_TO_750_KV;
                  case TO_1000_KV -> Setting.LINE_TO_1000_KV;
                });
  }
}
