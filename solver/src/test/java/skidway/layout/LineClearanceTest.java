package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.OverheadLine;
import skidway.site.Point;

class LineClearanceTest {
  private static final Settings DEFAULTS = Settings.defaults();

  /** 29 CFR 1926.1408 Table A: 10, 15, 20, 25, 35, 45 ft; a band's upper voltage belongs to it. */
  @ParameterizedTest
  @CsvSource({
    "0.24, 10",
    "50, 10",
    "50.1, 15",
    "200, 15",
    "200.1, 20",
    "350, 20",
    "350.1, 25",
    "500, 25",
    "500.1, 35",
    "750, 35",
    "750.1, 45",
    "1000, 45"
  })
  void agreesWithTheTable(double kilovolts, double feet) {
    assertThat(LineClearance.metres(line(kilovolts, OptionalDouble.empty()), DEFAULTS))
        .isCloseTo(feet * 0.3048, within(1e-9));
  }

  @Test
  void theOwnerMayAskForMoreAndNotForLess() {
    assertThat(LineClearance.metres(line(10, OptionalDouble.of(4)), DEFAULTS)).isEqualTo(4);
    assertThat(LineClearance.metres(line(10, OptionalDouble.of(2)), DEFAULTS)).isEqualTo(3.048);
  }

  @Test
  void aboveTheTableOnlyTheOwnerKnows() {
    assertThat(LineClearance.metres(line(1100, OptionalDouble.of(15)), DEFAULTS)).isEqualTo(15);
    assertThat(LineClearance.metres(line(1100, OptionalDouble.empty()), DEFAULTS)).isInfinite();
  }

  @Test
  void theSettingInForceCounts() {
    Settings wider = DEFAULTS.with(Setting.LINE_TO_50_KV, 5, "site rule");
    assertThat(LineClearance.metres(line(10, OptionalDouble.empty()), wider)).isEqualTo(5);
  }

  private static OverheadLine line(double kilovolts, OptionalDouble clearanceM) {
    return new OverheadLine("L", new Point(0, 0), new Point(9, 0), 1000 * kilovolts, clearanceM);
  }
}
