package skidway.audit;

/** What masses weigh. */
final class Gravity {
  /** Standard gravity, m/s² (ISO 80000-3). */
  private static final double STANDARD = 9.80665;

  private Gravity() {}

  static double newtons(double massKg) {
    return massKg * STANDARD;
  }

  static double kpa(double massKg, double areaM2) {
    return newtons(massKg) / 1000 / areaM2;
  }
}
