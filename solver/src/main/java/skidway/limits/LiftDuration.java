package skidway.limits;

/**
 * How long a spell of lifting lasts, by the rest that follows it: NIOSH 94-110 (rev. 9/2021) pp.
 * 13-14, where a short spell needs as much rest as it lasted (1.2 times in older editions).
 */
public enum LiftDuration {
  SHORT(1),
  MODERATE(3),
  LONG(5);

  private static final double HOUR_MIN = 60;

  /** Where the table of frequencies has its two columns for it; the first is for low lifts. */
  final int column;

  LiftDuration(int column) {
    this.column = column;
  }

  /**
   * The duration of a spell. One that is not rested from enough to be short is added to the next.
   *
   * @param workMin minutes of lifting
   * @param restMin minutes of light work or rest that follow
   * @throws IllegalArgumentException above 8 hours, for which the manual gives no limits
   */
  public static LiftDuration of(double workMin, double restMin) {
    if (!(workMin <= 8 * HOUR_MIN)) {
      throw new IllegalArgumentException("No limits are known for lifting " + workMin + " min.");
    }
    if (workMin <= HOUR_MIN && restMin >= workMin) {
      return SHORT;
    }
    return workMin <= 2 * HOUR_MIN && restMin >= 0.3 * workMin ? MODERATE : LONG;
  }
}
