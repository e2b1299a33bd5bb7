package skidway.timber;

/**
 * What something weighs, as far as it is known: limits are held to the high figure, hours are
 * reckoned with the likely one.
 */
public record MassRange(double lowKg, double likelyKg, double highKg) {
  public static final MassRange NOTHING = new MassRange(0, 0, 0);

  /** A mass that somebody weighed. */
  public static MassRange weighed(double kg) {
    return new MassRange(kg, kg, kg);
  }

  /** Both together. The highs add up: timbers of one lot are wet together. */
  public MassRange plus(MassRange other) {
    return new MassRange(lowKg + other.lowKg, likelyKg + other.likelyKg, highKg + other.highKg);
  }

  public MassRange times(double factor) {
    return new MassRange(lowKg * factor, likelyKg * factor, highKg * factor);
  }
}
