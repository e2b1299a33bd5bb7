package skidway.units;

/** Holds what one US customary unit is in SI; reading and writing use the same figures. */
final class Customary {
  /** Exact by definition: international yard and pound, 1959. */
  static final double METRES_PER_INCH = 0.0254;

  static final double METRES_PER_FOOT = 0.3048;
  static final double METRES_PER_MILE = 1609.344;
  static final double KG_PER_POUND = 0.45359237;

  /** One pound-force per square foot in kilopascals, standard gravity. */
  static final double KPA_PER_PSF = 0.04788025898;

  private Customary() {}

  /** Pound-force. */
  static final double NEWTONS_PER_POUND = 4.4482216152605;
}
