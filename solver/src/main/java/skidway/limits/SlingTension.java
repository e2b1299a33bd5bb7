package skidway.limits;

/**
 * The pull in slings. Two are counted, for a stiff load may hang on two of four (from memory,
 * confirm). Statics: mass over twice the sine of the angle. Each sling is inspected and kept within
 * its rating by those who rig (29 CFR 1926.251(a)); its tag governs.
 */
public final class SlingTension {
  private static final int SLINGS = 2;

  private SlingTension() {}

  /**
   * What each sling holds, told as the mass that would pull a straight one as hard, kg.
   *
   * @param angleDeg of the slings from the horizontal, above 0 to 90
   */
  public static double legKg(double massKg, double angleDeg) {
    return massKg / SLINGS * factor(angleDeg);
  }

  /** How many times harder a sling is pulled than one that hangs straight. */
  public static double factor(double angleDeg) {
    return 1 / Math.sin(Math.toRadians(angleDeg));
  }
}
