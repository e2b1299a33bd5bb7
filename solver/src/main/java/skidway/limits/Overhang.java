package skidway.limits;

/** How far a bundle reaches beyond one beneath it when both lie on the same centre. */
public final class Overhang {
  private Overhang() {}

  /** Overhang at each end (or side) in metres; 0 when the upper one is the smaller. */
  public static double eachEndM(double upperM, double lowerM) {
    return Math.max(0, (upperM - lowerM) / 2);
  }
}
