package skidway.limits;

/**
 * Computes the load of a mass spread evenly over an area. Floors and ground are posted in these
 * terms (29 CFR 1926.250(a)(2)); how joists share the load is not considered here.
 */
public final class AreaLoad {
  /** Standard acceleration of free fall, m/s² (ISO 80000-3). */
  private static final double GRAVITY = 9.80665;

  private AreaLoad() {}

  /** Weight of a mass in kg, newtons. */
  public static double newtons(double massKg) {
    return massKg * GRAVITY;
  }

  /** Load in kPa of a mass in kg over an area in m². */
  public static double kpa(double massKg, double areaM2) {
    return massKg * GRAVITY / 1000 / areaM2;
  }

  /** The mass in kg that makes a load in kPa over an area in m². */
  public static double massKg(double kpa, double areaM2) {
    return kpa * areaM2 * 1000 / GRAVITY;
  }

  /**
   * The area in m² that a stack bears on: its lowest bundle, widened by its bearers on both sides.
   */
  public static double bearingM2(double lengthM, double widthM, double bearerReachM) {
    return lengthM * (widthM + 2 * bearerReachM);
  }
}
