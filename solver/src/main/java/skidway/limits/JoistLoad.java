package skidway.limits;

/**
 * What one line load puts on one span of one joist, evenly from one place to another. Each span
 * counts as a simple beam (AWC Design Aid 6).
 *
 * @param joist number across the deck, from 0
 * @param span number along the joist, from 0
 * @param fromM from the span's start
 * @param toM from the span's start
 * @param share part of the stack's weight, 0 to 1
 */
public record JoistLoad(int joist, int span, double fromM, double toM, double share) {
  /** Shorter loads count as points. */
  public static final double POINT_M = 0.001;

  /** The same on a beam, when the stack weighs this much. */
  public BeamLoad of(double stackN) {
    double lengthM = toM - fromM;
    return lengthM < POINT_M
        ? new BeamLoad.Force(stackN * share, fromM + lengthM / 2)
        : BeamLoad.Spread.even(stackN * share / lengthM, fromM, toM);
  }

  /** What the span's start pushes up with for each newton of the stack. */
  public double reactionLeft(double spanM) {
    return share * (1 - middleM() / spanM);
  }

  /** What the span's end pushes up with for each newton of the stack. */
  public double reactionRight(double spanM) {
    return share * middleM() / spanM;
  }

  /** Bending moment at a place of the span for each newton of the stack, N m. */
  public double momentAt(double spanM, double xM) {
    return reactionLeft(spanM) * xM - of(1).integral(2, xM);
  }

  private double middleM() {
    return (fromM + toM) / 2;
  }
}
