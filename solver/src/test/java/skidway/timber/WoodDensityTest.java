package skidway.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WoodDensityTest {

  /** Specific gravity at 12 % of FPL-GTR-282 Table 5-3, which Eq 4-13 meets within 3 %. */
  @ParameterizedTest
  @CsvSource({"0.34, 0.35", "0.29, 0.31", "0.38, 0.41", "0.45, 0.48", "0.60, 0.68"})
  void isNearTheTabulatedGravityAtTwelvePct(double basic, double tabulated) {
    assertThat(WoodDensity.specificGravity(of(basic), 12))
        .isCloseTo(tabulated, withinPercentage(3));
  }

  @Test
  void usesTheMeasuredShrinkageWhereThereIsOne() {
    Species measured = new Species("measured", 0.38, OptionalDouble.of(11.1));
    assertThat(WoodDensity.specificGravity(measured, 0)).isCloseTo(0.38 / 0.889, within(1e-9));
    assertThat(WoodDensity.specificGravity(measured, 15)).isCloseTo(0.38 / 0.9445, within(1e-9));
  }

  @Property(seed = "20310505", tries = 200)
  void weighsOnlyItsWaterMoreAboveFibreSaturation(
      @ForAll @DoubleRange(min = 0.25, max = 0.7) double basic,
      @ForAll @DoubleRange(min = 30, max = 120) double moisturePct) {
    assertThat(WoodDensity.kgPerM3(of(basic), moisturePct))
        .isCloseTo(1000 * basic * (1 + moisturePct / 100), within(1e-6));
  }

  @Property(seed = "20310505", tries = 200)
  void growsWithMoisture(
      @ForAll @DoubleRange(min = 0.25, max = 0.7) double basic,
      @ForAll @DoubleRange(min = 5, max = 18) double shrinkagePct,
      @ForAll @DoubleRange(min = 0, max = 120) double drierPct,
      @ForAll @DoubleRange(min = 0.1, max = 30) double morePct) {
    Species species = new Species("any", basic, OptionalDouble.of(shrinkagePct));
    assertThat(WoodDensity.kgPerM3(species, drierPct + morePct))
        .isGreaterThan(WoodDensity.kgPerM3(species, drierPct));
  }

  private static Species of(double basic) {
    return new Species("any", basic, OptionalDouble.empty());
  }
}
