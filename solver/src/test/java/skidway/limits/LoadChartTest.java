package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.site.ChartRow;
import skidway.site.Grip;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;

class LoadChartTest {
  private static final double KG_PER_LB = 0.45359237;
  private static final double M_PER_FT = 0.3048;
  private static final double M_PER_IN = 0.0254;

  private static final Grip SLINGS =
      new Grip.Slings(OptionalDouble.empty(), OptionalDouble.empty());
  private static final Grip FORKS_24_IN = new Grip.Forks(OptionalDouble.of(24 * M_PER_IN));

  private static Machine machine(Grip grip, double riggingLb, ChartRow... rows) {
    return new Machine(
        "any",
        List.of(new MachineStand("M", new Point(0, 0))),
        List.of(rows),
        grip,
        OptionalDouble.empty(),
        riggingLb * KG_PER_LB,
        "");
  }

  private static ChartRow row(double feet, double lb) {
    return new ChartRow(feet * M_PER_FT, lb * KG_PER_LB);
  }

  /**
   * Worked figures of BC Crane Safety, "Load charts" (bccranesafety.ca): capacity shrinks from
   * 18,300 lb at 45 ft to 7,000 lb at 60.4 ft; between rows the next larger radius rules.
   */
  @Test
  void takesTheRowOfTheNextLargerReach() {
    Machine crane = machine(SLINGS, 0, row(45, 18_300), row(60.4, 7_000));
    assertThat(LoadChart.capacityKg(crane, 45 * M_PER_FT)).isEqualTo(18_300 * KG_PER_LB);
    assertThat(LoadChart.capacityKg(crane, 45.1 * M_PER_FT)).isEqualTo(7_000 * KG_PER_LB);
    assertThat(LoadChart.capacityKg(crane, 60.5 * M_PER_FT)).isZero();
    assertThat(LoadChart.farthestM(crane)).isEqualTo(60.4 * M_PER_FT);
  }

  /** Net capacities of the same page: block, ball, stowed jib and boom head count as load. */
  @ParameterizedTest
  @CsvSource({"45, 18300, 1868, 16432", "30, 14450, 2101, 12349", "60.4, 7000, 560, 6440"})
  void riggingCountsAsLoad(double feet, double grossLb, double riggingLb, double netLb) {
    Machine crane = machine(SLINGS, riggingLb, row(feet, grossLb));
    assertThat(LoadChart.bundleCapacityKg(crane, feet * M_PER_FT, 1) / KG_PER_LB)
        .isCloseTo(netLb, within(1e-6));
  }

  /**
   * "Load composition, part 2" (blog.forklifttraining.ws, 2014, after OSHA's eTool): a plate for 24
   * in, the load's middle farther out. Printed results are cut off to whole pounds.
   */
  @ParameterizedTest
  @CsvSource({"5000, 28, 4285", "4000, 36, 2666"})
  void aFartherLoadCentreLowersTheCapacityInProportion(double lb, double middleIn, double printed) {
    Machine truck = machine(FORKS_24_IN, 0, row(10, lb));
    assertThat(LoadChart.bundleCapacityKg(truck, 1, 2 * middleIn * M_PER_IN) / KG_PER_LB)
        .isBetween(printed, printed + 1);
  }

  /** The yard rule "100 lb for each inch" gives 3,400 lb here and is not on the safe side. */
  @Test
  void aPlateIsNotLoweredByOneHundredPoundsAnInch() {
    Machine truck = machine(FORKS_24_IN, 0, row(10, 5000));
    assertThat(LoadChart.bundleCapacityKg(truck, 1, 80 * M_PER_IN) / KG_PER_LB)
        .isCloseTo(3000, within(1e-6));
  }

  @Test
  void aNearerLoadCentreOrAnUnknownOneChangesNothing() {
    Machine truck = machine(FORKS_24_IN, 0, row(10, 5000));
    assertThat(LoadChart.bundleCapacityKg(truck, 1, 48 * M_PER_IN)).isEqualTo(5000 * KG_PER_LB);
    assertThat(LoadChart.bundleCapacityKg(truck, 1, 0.5)).isEqualTo(5000 * KG_PER_LB);
    Machine unstated = machine(new Grip.Forks(OptionalDouble.empty()), 0, row(10, 5000));
    assertThat(LoadChart.bundleCapacityKg(unstated, 1, 3)).isEqualTo(5000 * KG_PER_LB);
  }

  @Test
  void wherePlainRiggingIsTooHeavyNothingIsLifted() {
    assertThat(LoadChart.bundleCapacityKg(machine(SLINGS, 600, row(10, 500)), 1, 1)).isZero();
    assertThat(LoadChart.bundleCapacityKg(machine(SLINGS, 600, row(10, 5000)), 9, 1)).isZero();
  }
}
