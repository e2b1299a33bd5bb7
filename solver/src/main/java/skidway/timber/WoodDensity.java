package skidway.timber;

/**
 * Computes the density of wood from its specific gravity and moisture.
 *
 * <p>Below fibre saturation wood swells as it takes up water; above it only its mass grows. Source:
 * Wood Handbook, FPL-GTR-282 (2021), ch. 4: shrinkage Eq 4-9, specific gravity Eq 4-11 to 4-13,
 * density Eq 4-14. Within one species about ±10 % is normal.
 */
public final class WoodDensity {
  /** Moisture at which wood stops swelling, percent; FPL-GTR-282 p. 4-2. */
  static final double FIBRE_SATURATION_PCT = 30;

  private static final double WATER_KG_PER_M3 = 1000;

  private WoodDensity() {}

  /**
   * Density at a moisture content.
   *
   * @param moisturePct water over oven-dry wood by mass, percent, 0 to {@link #mostMoisturePct}
   * @return kg/m³
   */
  public static double kgPerM3(Species species, double moisturePct) {
    return WATER_KG_PER_M3 * specificGravity(species, moisturePct) * (1 + moisturePct / 100);
  }

  /**
   * Oven-dry mass over the volume at a moisture content, relative to water (Eq 4-11; Eq 4-12 stands
   * in for an unknown shrinkage).
   */
  static double specificGravity(Species species, double moisturePct) {
    double basic = species.basicSpecificGravity();
    double shrinkagePct = species.volumetricShrinkagePct().orElse(26.5 * basic);
    double below = Math.min(moisturePct, FIBRE_SATURATION_PCT) / FIBRE_SATURATION_PCT;
    return basic / (1 - shrinkagePct / 100 * (1 - below));
  }

  /** The most water the wood can hold, percent (Eq 4-3): every hollow of it full. */
  public static double mostMoisturePct(Species species) {
    double basic = species.basicSpecificGravity();
    return 100 * (1.54 - basic) / (1.54 * basic);
  }
}
