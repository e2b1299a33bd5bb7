package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.layout.ExcavationSetback;
import skidway.layout.LineClearance;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.KeepClear;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;

class HazardsTest {
  private static final Settings SETTINGS = Settings.defaults();

  private static double clearM(double volts, OptionalDouble owners) {
    OverheadLine line = new OverheadLine("L", new Point(0, 0), new Point(9, 0), volts, owners);
    return LineClearance.metres(line, SETTINGS);
  }

  private static KeepClear trench(double marginM, OptionalDouble depthM) {
    return new KeepClear("K", Outline.box(0, 0, 1, 1), marginM, "trench", false, true, depthM);
  }

  /** Feet of 29 CFR 1926.1408 Table A, at the upper end of each row and just above it. */
  @ParameterizedTest
  @CsvSource({
    "400, 10",
    "50000, 10",
    "50001, 15",
    "200000, 15",
    "200001, 20",
    "350000, 20",
    "350001, 25",
    "500000, 25",
    "500001, 35",
    "750000, 35",
    "750001, 45",
    "1000000, 45"
  })
  void clearanceGrowsWithTheVoltage(double volts, double feet) {
    assertThat(clearM(volts, OptionalDouble.empty())).isCloseTo(feet * 0.3048, within(1e-9));
  }

  @Test
  void theOwnersFigureCountsWhenItIsMore() {
    assertThat(clearM(400, OptionalDouble.of(5))).isEqualTo(5);
    assertThat(clearM(400, OptionalDouble.of(1))).isCloseTo(3.048, within(1e-9));
    assertThat(clearM(1_200_000, OptionalDouble.of(18))).isEqualTo(18);
  }

  @Test
  void anExcavationIsKeptFromByTheLargestOfThree() {
    double publishedM = SETTINGS.get(Setting.EXCAVATION_SETBACK);
    assertThat(ExcavationSetback.metres(trench(0.1, OptionalDouble.empty()), SETTINGS))
        .isEqualTo(publishedM);
    assertThat(ExcavationSetback.metres(trench(0.9, OptionalDouble.of(0.5)), SETTINGS))
        .isEqualTo(0.9);
    assertThat(ExcavationSetback.metres(trench(0.9, OptionalDouble.of(1.8)), SETTINGS))
        .isEqualTo(1.8);
  }

  @Test
  void whatLiesBeyondABoxIsCutOff() {
    Box box = Box.at(0, 0, 10, 10);
    List<PagePoint> cut = Clip.polygon(Box.at(-5, 4, 30, 2).corners(), box);
    assertThat(Box.of(cut)).isEqualTo(Box.at(0, 4, 10, 2));
    assertThat(Clip.polygon(Box.at(20, 20, 3, 3).corners(), box)).isEmpty();
    assertThat(Clip.line(new PagePoint(-10, 5), new PagePoint(20, 5), box))
        .containsExactlyInAnyOrder(new PagePoint(0, 5), new PagePoint(10, 5));
    assertThat(Clip.line(new PagePoint(2, 3), new PagePoint(4, 5), box))
        .containsExactlyInAnyOrder(new PagePoint(2, 3), new PagePoint(4, 5));
    assertThat(Clip.line(new PagePoint(-1, 12), new PagePoint(12, 14), box)).isEmpty();
  }

  @Test
  void joistsRunThroughTheGivenPoint() {
    List<PagePoint> square = Box.at(0, 0, 4, 4).corners();
    assertThat(Scanlines.through(new PagePoint(9, 0.5), square, 0, 2))
        .isEqualTo("M0,0.5L4,0.5M0,2.5L4,2.5");
    assertThat(Scanlines.through(new PagePoint(1, 9), square, 90, 100)).isEqualTo("M1,0L1,4");
  }
}
