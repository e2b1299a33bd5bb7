package skidway.limits;

/**
 * The revised NIOSH lifting equation: the load that most healthy people may lift over a working
 * day, LC · HM · VM · DM · AM · FM · CM. Source: NIOSH 94-110, rev. 9/2021, pp. 7-18; formulas, not
 * the rounded tables. The metric form takes cm and gives kg, the US form takes inches and gives
 * pounds; they are no exact conversions of each other (51 lb is 23.13 kg).
 *
 * <p>Not valid, by the manual (pp. 5-6), for lifting with one hand, kneeling, in tight room,
 * unstable loads, carrying beyond a step or two, slippery ground, heat or cold. Long timbers, teams
 * and carrying are outside of it: here it is a screening, no proof that a lift is safe. No form of
 * it says what a given person can lift.
 */
public enum LiftingEquation {
  METRIC(23, 25, 63, 20, 75, 0.003, 175, 4.5),
  US(51, 10, 25, 8, 30, 0.0075, 70, 1.8);

  private static final double TRAVEL_FLOOR = 0.82;
  private static final double PER_DEGREE = 0.0032;
  private static final double MOST_TWIST_DEG = 135;

  private final double loadConstant;
  private final double nearest;
  private final double farthest;
  private final double body;
  private final double knuckle;
  private final double perHeight;
  private final double highest;
  private final double perTravel;

  LiftingEquation(
      double loadConstant,
      double nearest,
      double farthest,
      double body,
      double knuckle,
      double perHeight,
      double highest,
      double perTravel) {
    this.loadConstant = loadConstant;
    this.nearest = nearest;
    this.farthest = farthest;
    this.body = body;
    this.knuckle = knuckle;
    this.perHeight = perHeight;
    this.highest = highest;
    this.perTravel = perTravel;
  }

  /** The recommended weight limit RWL at one end of a lift, kg or pounds; the lower end rules. */
  public double recommended(HandLift lift) {
    return loadConstant
        * horizontal(lift.reach())
        * vertical(lift.height())
        * distance(lift.travel())
        * asymmetry(lift.twistDeg())
        * LiftFrequency.multiplier(lift.liftsPerMin(), lift.duration(), lift.pickHeight() < knuckle)
        * lift.coupling().multiplier(lift.height() < knuckle);
  }

  /** Height at which a lift is easiest. */
  double easiestHeight() {
    return knuckle;
  }

  /** Height above which nothing is lifted. */
  double highestHeight() {
    return highest;
  }

  /** The lifting index: a load over what is recommended; the aim is 1 or less (p. 20). */
  public double index(double load, HandLift lift) {
    return load / recommended(lift);
  }

  /** HM: nearer than the body is counts as at the body, beyond 63 cm (25 in) nothing is lifted. */
  public double horizontal(double reach) {
    return reach > farthest ? 0 : nearest / Math.max(nearest, reach);
  }

  /** VM: best at knuckle height, nothing above 175 cm (70 in) or below the floor. */
  public double vertical(double height) {
    boolean inRange = height >= 0 && height <= highest;
    return inRange ? 1 - perHeight * Math.abs(height - knuckle) : 0;
  }

  /** DM: less than 25 cm (10 in) counts as that, beyond 175 cm (70 in) nothing is lifted. */
  public double distance(double travel) {
    return travel > highest ? 0 : TRAVEL_FLOOR + perTravel / Math.max(nearest, travel);
  }

  /** AM: nothing beyond 135 degrees. */
  public double asymmetry(double twistDeg) {
    return twistDeg > MOST_TWIST_DEG ? 0 : 1 - PER_DEGREE * twistDeg;
  }

  /**
   * The reach H where nobody measured it (p. 8).
   *
   * @param depth of the load, away from the body
   */
  public double estimatedReach(double height, double depth) {
    return (height >= nearest ? body : nearest) + depth / 2;
  }
}
