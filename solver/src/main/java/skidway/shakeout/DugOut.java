package skidway.shakeout;

import java.util.function.IntPredicate;

/**
 * Keeps count of the pieces of a wave that are moved aside, as {@link Aside} tells them, while
 * pieces are brought and left: each knows how many beneath it are taken out before it.
 */
final class DugOut {
  private final Timbers timbers;
  private final int from;
  private final int to;
  private final boolean[] brought;

  /** By piece of the wave: how many beneath it are taken out earlier. */
  private final int[] earlier;

  private int asideCount;

  /**
   * @param from the refill point
   * @param to the next one
   */
  DugOut(Timbers timbers, int from, int to, IntPredicate isBrought) {
    this.timbers = timbers;
    this.from = from;
    this.to = to;
    brought = new boolean[to - from];
    earlier = new int[to - from];
    for (int pull = from; pull < to; pull++) {
      brought[pull - from] = isBrought.test(pull);
    }
    for (int pull = from; pull < to; pull++) {
      count(pull);
    }
  }

  /** How many pieces of the wave are moved aside. */
  int asideCount() {
    return asideCount;
  }

  boolean isAside(int pull) {
    return earlier[pull - from] > 0;
  }

  void bring(int pull, boolean isBrought) {
    if (brought[pull - from] == isBrought) {
      return;
    }
    int before = takenOut(pull);
    brought[pull - from] = isBrought;
    int after = takenOut(pull);
    count(pull);
    for (int upper : timbers.above[pull]) {
      if (isOfWave(upper)) {
        int out = takenOut(upper);
        set(upper, earlier[upper - from] + (after < out ? 1 : 0) - (before < out ? 1 : 0));
      }
    }
  }

  private void count(int pull) {
    int out = takenOut(pull);
    int count = 0;
    for (int lower : timbers.beneath[pull]) {
      count += takenOut(lower) < out ? 1 : 0;
    }
    set(pull, count);
  }

  private void set(int pull, int count) {
    asideCount += Integer.signum(count) - Integer.signum(earlier[pull - from]);
    earlier[pull - from] = count;
  }

  private int takenOut(int pull) {
    return Aside.takenOut(timbers, from, pull, isOfWave(pull) && brought[pull - from]);
  }

  private boolean isOfWave(int pull) {
    return pull >= from && pull < to;
  }
}
