package skidway.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds computed densities to formulas, to a worked example and to what timbers weigh in trade. */
class WoodDensityChecksTest {
  private static final double KG_PER_M3_PER_LB_PER_FT3 = 0.45359237 / (0.3048 * 0.3048 * 0.3048);

  /**
   * The gravity and the weight of these two rows contradict each other: 28 lb/ft³ at gravity 0.32
   * is 40 % of water, 27 lb/ft³ at 0.43 is under 1 %. Neither is air-dry, so nothing can be learnt.
   */
  private static final Set<String> CONTRADICTS_ITSELF =
      Set.of("subalpine fir", "Pacific silver fir");

  @ParameterizedTest
  @CsvFileSource(resources = "density-by-formula.csv", numLinesToSkip = 4)
  void agreesWithTheFormulaOnItsOwnBasis(
      String method,
      String subject,
      double gravity,
      double moisturePct,
      Double gravityThen,
      double kgPerM3,
      Double lbPerFt3) {
    if (method.startsWith("FPL")) {
      Species species = of(gravity, GravityBasis.GREEN_VOLUME);
      assertThat(WoodDensity.specificGravity(species, moisturePct))
          .as(subject)
          .isCloseTo(gravityThen, within(0.000051));
      assertThat(WoodDensity.kgPerM3(species, moisturePct)).isCloseTo(kgPerM3, within(0.051));
    } else {
      // The NDS takes water at 62.4 lb/ft³, a trifle less than 1000 kg/m³.
      double toWater =
          WoodDensity.kgPerM3(of(gravity, GravityBasis.OVEN_DRY_VOLUME), moisturePct) / 1000;
      assertThat(62.4 * toWater).as(subject).isCloseTo(lbPerFt3, within(0.0051));
      assertThat(62.4 * KG_PER_M3_PER_LB_PER_FT3 * toWater).isCloseTo(kgPerM3, within(0.051));
    }
  }

  /** A species known by its gravity at 12 % weighs the same as by its basic gravity. */
  @ParameterizedTest
  @CsvFileSource(resources = "density-by-formula.csv", numLinesToSkip = 4)
  void agreesWithTheFormulaFromTheGravityAtTwelvePct(
      String method, String subject, double gravity, double moisturePct) {
    double atTwelve = WoodDensity.specificGravity(of(gravity, GravityBasis.GREEN_VOLUME), 12);
    if (method.startsWith("FPL")) {
      assertThat(WoodDensity.kgPerM3(of(atTwelve, GravityBasis.AIR_DRY_VOLUME), moisturePct))
          .as(subject)
          .isCloseTo(
              WoodDensity.kgPerM3(of(gravity, GravityBasis.GREEN_VOLUME), moisturePct),
              within(1e-9));
    }
  }

  /**
   * Worked example of the University of Missouri's forestry pages, after FPL-GTR-190 ch. 4; its
   * pounds are cut off at the third place.
   */
  @Test
  void agreesWithThePublishedWorkedExample() {
    double kgPerM3 = WoodDensity.kgPerM3(of(0.4, GravityBasis.AIR_DRY_VOLUME), 12);
    assertThat(kgPerM3).isCloseTo(448.0, within(1e-9));
    assertThat(kgPerM3 / 1000 * 62.43).isCloseTo(27.968, within(0.001));
  }

  /** Rounded trade figures, so 10 % is as near as they are to be taken. */
  @ParameterizedTest
  @CsvFileSource(resources = "shipping-weights.csv", numLinesToSkip = 3)
  void isNearShippingWeightsAirDry(
      String subject, String state, double gravity, Double kgPerM3, double lbPerFt3) {
    if (state.equals("air-dry") && !CONTRADICTS_ITSELF.contains(subject)) {
      double shipping = kgPerM3 == null ? lbPerFt3 * KG_PER_M3_PER_LB_PER_FT3 : kgPerM3;
      assertThat(WoodDensity.kgPerM3(of(gravity, GravityBasis.AIR_DRY_VOLUME), 12))
          .as(subject)
          .isCloseTo(shipping, withinPercentage(10));
    }
  }

  /**
   * Green weights of the same page against the moisture of freshly felled trees in the species
   * table, which is from elsewhere: 12 %, and within what limits are held to. Douglas-fir is the
   * worst, 11.6 % below; its tree average of 35.3 % is drier than even its heartwood in the
   * handbook. Noble, subalpine, Pacific silver and California red fir are left out: their green
   * moisture was not read anywhere.
   */
  @ParameterizedTest
  @CsvSource({
    "douglas-fir (coast), 689",
    "western larch, 801",
    "engelmann spruce, 577",
    "western hemlock, 656.8",
    "grand fir, 752.9"
  })
  void isNearShippingWeightsGreen(String name, double shipping) {
    Species species = SpeciesTable.find(name).orElseThrow();
    MassRange green = WoodDensity.range(species, species.green().orElseThrow());
    assertThat(green.likelyKg()).isCloseTo(shipping, withinPercentage(12));
    assertThat(shipping).isBetween(green.lowKg(), green.highKg());
  }

  private static Species of(double gravity, GravityBasis basis) {
    return new Species(
        "any", new SpecificGravity(gravity, basis), OptionalDouble.empty(), Optional.empty(), 0);
  }
}
