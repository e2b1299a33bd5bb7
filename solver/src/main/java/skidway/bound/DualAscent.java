package skidway.bound;

/**
 * Raises a lower bound step by step. What spots take too often gets cheaper, what nobody takes gets
 * dearer; an average of past answers says in which direction, and every step starts from the best
 * prices so far (volume algorithm: Barahona and Anbil, Mathematical Programming 87, 2000, from
 * memory). Only the way to the prices is guesswork in floating point; what they prove is exact.
 */
final class DualAscent {
  /**
   * How an ascent goes.
   *
   * @param farShare of the last answer in the average while strides are long
   * @param freshShare of the last answer in the average after that
   * @param patience failures at one stride
   */
  record Pace(double farShare, double freshShare, int patience) {}

  /** Most bound for few steps. */
  static final Pace BRISK = new Pace(0.05, 0.05, 5);

  /** The same from prices that may be far off. */
  static final Pace EAGER = new Pace(0.1, 0.05, 5);

  /** Slower, with better averages: they tell what the relaxation takes too often. */
  static final Pace STEADY = new Pace(0.02, 0.02, 20);

  private static final double FIRST_STRIDE = 0.1;
  private static final double LONGEST_STRIDE = 2;
  private static final double SHORTEST_STRIDE = 1e-3;

  private final Lagrangian relaxation;
  private final Pace pace;
  private final Prices best;
  private final Prices trial;

  /** The last answer's lacks and excesses, and their running average. */
  private final double[] off;

  private final double[] way;
  private long bestMs;
  private double stride = FIRST_STRIDE;
  private int failures;

  DualAscent(Lagrangian relaxation, Prices start) {
    this(relaxation, start, BRISK);
  }

  DualAscent(Lagrangian relaxation, Prices start, Pace pace) {
    this.relaxation = relaxation;
    this.pace = pace;
    this.best = start.copy();
    this.trial = start.copy();
    this.off = new double[start.ms.length];
    this.way = new double[start.ms.length];
    bestMs = relaxation.valueMs(best, off);
    turn(1);
  }

  long bestMs() {
    return bestMs;
  }

  Prices best() {
    return best;
  }

  /**
   * Goes on until the bound reaches a plan's cost, so many steps were gone, or strides have become
   * too small to matter.
   */
  void climb(long aimMs, int mostClimbs) {
    for (int i = 0; i < mostClimbs && bestMs < aimMs && stride > SHORTEST_STRIDE; i++) {
      step(aimMs);
    }
  }

  private void step(long aimMs) {
    double squares = 0;
    for (int i = 0; i < way.length; i++) {
      squares += isStuck(i) ? 0 : way[i] * way[i];
    }
    if (squares < 1e-12) {
      stride = 0;
      return;
    }
    double by = stride * Math.max(1, aimMs - bestMs) / squares;
    for (int i = 0; i < way.length; i++) {
      long next = best.ms[i] + Math.round(by * way[i]);
      trial.ms[i] = best.isCharge(i) ? Math.max(0, next) : next;
    }
    long value = relaxation.valueMs(trial, off);
    double along = 0;
    for (int i = 0; i < way.length; i++) {
      along += way[i] * off[i];
    }
    turn(stride > FIRST_STRIDE ? pace.farShare : pace.freshShare);
    if (value > bestMs) {
      bestMs = value;
      best.take(trial);
      failures = 0;
      stride = along > 0 ? Math.min(LONGEST_STRIDE, 1.1 * stride) : stride;
    } else if (++failures >= pace.patience) {
      failures = 0;
      stride *= 0.66;
    }
  }

  /** A charge that is nil already and would have to fall. */
  private boolean isStuck(int i) {
    return best.isCharge(i) && best.ms[i] == 0 && way[i] < 0;
  }

  private void turn(double share) {
    for (int i = 0; i < way.length; i++) {
      way[i] += share * (off[i] - way[i]);
    }
  }
}
