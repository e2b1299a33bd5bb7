package skidway.audit;

/**
 * What the revised lifting equation recommends for one person over a working day, metric, poorly
 * held and not turned: NIOSH 94-110 (rev. 9/2021) pp. 7-18. A screening; long timbers, teams and
 * carrying are outside its validity.
 */
final class LiftLimit {
  private static final double LOAD_KG = 23;
  private static final double POOR_COUPLING = 0.90;

  /** Table 5, lifting for more than 2 and up to 8 hours, by lifts a minute. */
  private static final double[] PER_MIN = {0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10};

  private static final double[] FROM_LOW = {
    0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18
  };
  private static final double[] FROM_HIGH = {
    0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13
  };

  private final double liftsPerMin;

  LiftLimit(double liftsPerMin) {
    this.liftsPerMin = liftsPerMin;
  }

  /**
   * Kilograms for each person, at one end of a lift; 0 where nothing is to be lifted.
   *
   * @param widthCm of the piece, away from the body
   * @param heightCm of the hands at the end that is looked at
   * @param pickCm of the hands where it is picked
   * @param travelCm how far it goes up or down
   */
  double kg(double widthCm, double heightCm, double pickCm, double travelCm) {
    double reachCm = (heightCm < 25 ? 25 : 20) + widthCm / 2;
    boolean never = reachCm > 63 || heightCm < 0 || heightCm > 175 || travelCm > 175;
    if (never) {
      return 0;
    }
    double reach = 25 / Math.max(25, reachCm);
    double height = 1 - 0.003 * Math.abs(heightCm - 75);
    double travel = 0.82 + 4.5 / Math.max(25, travelCm);
    return LOAD_KG * reach * height * travel * frequency(pickCm) * POOR_COUPLING;
  }

  private double frequency(double pickCm) {
    double[] column = pickCm < 75 ? FROM_LOW : FROM_HIGH;
    if (liftsPerMin <= PER_MIN[0]) {
      return column[0];
    }
    for (int i = 1; i < column.length; i++) {
      if (liftsPerMin <= PER_MIN[i]) {
        double share = (liftsPerMin - PER_MIN[i - 1]) / (PER_MIN[i] - PER_MIN[i - 1]);
        return column[i - 1] + share * (column[i] - column[i - 1]);
      }
    }
    return 0;
  }
}
