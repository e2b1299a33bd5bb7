package skidway.timber;

/**
 * Computes the density of wood from its specific gravity and moisture.
 *
 * <p>Below fibre saturation wood swells as it takes up water; above it only its mass grows. Source:
 * Wood Handbook, FPL-GTR-282 (2021), ch. 4: shrinkage Eq 4-9, specific gravity Eq 4-11 to 4-13,
 * density Eq 4-14. A gravity on oven-dry volume swells by the rule of the NDS Supplement (2018), G
 * / (1 + 0.009 G M); that rule has no end, so the moisture in it is held at fibre saturation.
 */
public final class WoodDensity {
  /** Moisture at which wood stops swelling, percent; FPL-GTR-282 p. 4-2. */
  static final double FIBRE_SATURATION_PCT = 30;

  private static final double WATER_KG_PER_M3 = 1000;

  /** Volumetric shrinkage over basic gravity, percent, where it was not measured: Eq 4-12. */
  private static final double SHRINKAGE_PER_GRAVITY = 26.5;

  private static final double AIR_DRY_PCT = 12;

  private WoodDensity() {}

  /** Density of a lot of the species over its moistures, kg/m³ as kg of one cubic metre. */
  public static MassRange range(Species species, Moisture moisture) {
    return new MassRange(
        kgPerM3(species, moisture.lowPct()) * (1 - species.spreadShare()),
        kgPerM3(species, moisture.likelyPct()),
        kgPerM3(species, moisture.highPct()) * (1 + species.spreadShare()));
  }

  /**
   * Density at a moisture content.
   *
   * @param moisturePct water over oven-dry wood by mass, percent, 0 to {@link #mostMoisturePct}
   * @return kg/m³
   */
  public static double kgPerM3(Species species, double moisturePct) {
    return WATER_KG_PER_M3 * specificGravity(species, moisturePct) * (1 + moisturePct / 100);
  }

  /** Oven-dry mass over the volume at a moisture content, relative to water. */
  static double specificGravity(Species species, double moisturePct) {
    double belowPct = Math.min(moisturePct, FIBRE_SATURATION_PCT);
    if (species.gravity().basis() == GravityBasis.OVEN_DRY_VOLUME) {
      double ovenDry = species.gravity().value();
      return ovenDry / (1 + 0.009 * ovenDry * belowPct);
    }
    double basic = basic(species);
    return basic / (1 - shrinkagePct(species, basic) / 100 * (1 - belowPct / FIBRE_SATURATION_PCT));
  }

  /** Oven-dry mass over green volume, relative to water. */
  static double basic(Species species) {
    double value = species.gravity().value();
    double dried = 1 - AIR_DRY_PCT / FIBRE_SATURATION_PCT;
    return switch (species.gravity().basis()) {
      case GREEN_VOLUME -> value;
      case AIR_DRY_VOLUME ->
          species.volumetricShrinkagePct().isPresent()
              ? value * (1 - species.volumetricShrinkagePct().getAsDouble() / 100 * dried)
              : value / (1 + SHRINKAGE_PER_GRAVITY / 100 * dried * value);
      case OVEN_DRY_VOLUME -> value / (1 + 0.009 * value * FIBRE_SATURATION_PCT);
    };
  }

  private static double shrinkagePct(Species species, double basic) {
    return species.volumetricShrinkagePct().orElse(SHRINKAGE_PER_GRAVITY * basic);
  }

  /** The most water the wood can hold, percent (Eq 4-3): every hollow of it full. */
  public static double mostMoisturePct(Species species) {
    double basic = basic(species);
    return 100 * (1.54 - basic) / (1.54 * basic);
  }
}
