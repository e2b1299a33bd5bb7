package skidway.shakeout;

import java.util.function.IntPredicate;

/**
 * Tells which pieces are moved aside: those with something beneath them that is taken out earlier.
 * A piece is taken out when its turn comes on the wall, or at the refill point of its wave if it is
 * brought to a pile; what is taken out at one refill point is taken from the top down.
 */
final class Aside {
  private final Timbers timbers;
  private final int from;
  private final IntPredicate brought;

  /**
   * @param from the refill point
   * @param brought whether a piece, told by its pull index, is brought then; all others are pulled
   *     straight
   */
  Aside(Timbers timbers, int from, IntPredicate brought) {
    this.timbers = timbers;
    this.from = from;
    this.brought = brought;
  }

  /**
   * @param brought whether the pieces after the refill point are brought then
   */
  Aside(Timbers timbers, int from, boolean[] brought) {
    this(timbers, from, i -> i >= from && i < from + brought.length && brought[i - from]);
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

  /** Refill points lie between pulls. */
  private int takenOut(int pull) {
    return brought.test(pull) ? 2 * from - 1 : 2 * timbers.turn[pull];
  }
}
