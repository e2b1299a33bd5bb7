package skidway.shakeout;

/**
 * Tells which pieces are moved aside: those with something beneath them that is taken out earlier.
 * A piece is taken out when its turn comes on the wall, or at the refill point of its wave if it is
 * brought to a pile; what is taken out at one refill point is taken from the top down.
 */
final class Aside {
  private final Timbers timbers;
  private final int from;
  private final boolean[] brought;

  /**
   * @param from the refill point
   * @param brought whether the pieces after the refill point are brought then; all others are
   *     pulled straight
   */
  Aside(Timbers timbers, int from, boolean[] brought) {
    this.timbers = timbers;
    this.from = from;
    this.brought = brought.clone();
  }

  boolean isAside(int pull) {
    int out = takenOut(pull);
    for (int lower : timbers.beneath[pull]) {
      if (takenOut(lower) < out) {
        return true;
      }
    }
    return false;
  }

  /** Whether it would be moved aside even if it were brought: something before uncovered it. */
  boolean isAsideIfBrought(int pull) {
    for (int lower : timbers.beneath[pull]) {
      if (lower < from) {
        return true;
      }
    }
    return false;
  }

  private int takenOut(int pull) {
    boolean isOfWave = pull >= from && pull < from + brought.length;
    return takenOut(timbers, from, pull, isOfWave && brought[pull - from]);
  }

  /** When a piece is taken out of its bundle, in half pulls: refill points lie between pulls. */
  static int takenOut(Timbers timbers, int from, int pull, boolean brought) {
    return brought ? 2 * from - 1 : 2 * timbers.turn[pull];
  }
}
