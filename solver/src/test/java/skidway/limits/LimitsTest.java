package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;

class LimitsTest {
  private static final double KG_PER_LB = 0.45359237;
  private static final double M_PER_FT = 0.3048;

  /**
   * Worked figures of BC Crane Safety, "Load charts" (bccranesafety.ca): capacity shrinks from
   * 18,300 lb at 45 ft to 7,000 lb at 60.4 ft; between rows the next larger radius rules.
   */
  private static final Machine CRANE =
      new Machine(
          "crane",
          List.of(new MachineStand("M", new Point(0, 0))),
          List.of(
              new ChartRow(45 * M_PER_FT, 18_300 * KG_PER_LB),
              new ChartRow(60.4 * M_PER_FT, 7_000 * KG_PER_LB)));

  @Test
  void loadChartTakesTheRowOfTheNextLargerReach() {
    assertThat(LoadChart.capacityKg(CRANE, 45 * M_PER_FT)).isEqualTo(18_300 * KG_PER_LB);
    assertThat(LoadChart.capacityKg(CRANE, 45.1 * M_PER_FT)).isEqualTo(7_000 * KG_PER_LB);
    assertThat(LoadChart.capacityKg(CRANE, 60.5 * M_PER_FT)).isZero();
  }

  @Test
  void areaLoadAgreesWithPoundsPerSquareFoot() {
    // 40 psf, the floor live load of IRC Table R301.5, is 4,000 lb on 100 ft² and 1.915 kPa.
    double areaM2 = 100 * M_PER_FT * M_PER_FT;
    assertThat(AreaLoad.kpa(4000 * KG_PER_LB, areaM2)).isCloseTo(1.915, within(0.0005));
    assertThat(AreaLoad.massKg(AreaLoad.kpa(350, 2.5), 2.5)).isCloseTo(350, within(1e-9));
    assertThat(AreaLoad.bearingM2(4, 0.6, 0.1)).isCloseTo(3.2, within(1e-12));
  }

  @Test
  void everyPersonTakesTheirShareAndNobodyLessThanOnePiece() {
    assertThat(TeamLift.people(23, 23)).isEqualTo(1);
    assertThat(TeamLift.people(23.1, 23)).isEqualTo(2);
    assertThat(TeamLift.people(0.5, 23)).isEqualTo(1);
  }

  @Test
  void overhangIsHalfTheDifference() {
    assertThat(Overhang.eachEndM(4, 3)).isEqualTo(0.5);
    assertThat(Overhang.eachEndM(3, 4)).isZero();
  }
}
