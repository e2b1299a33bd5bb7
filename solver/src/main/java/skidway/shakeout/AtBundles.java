package skidway.shakeout;

/**
 * Prices what is done at the bundles: each piece is picked, moved aside before if something beneath
 * it went earlier, and carried straight to its wall unless a wave brings it to a pile.
 */
final class AtBundles {
  private AtBundles() {}

  /**
   * Of the pieces from a refill point on, as many as there are marks.
   *
   * @param brought whether a wave brings them
   */
  static Cost cost(Timbers timbers, int from, boolean[] brought) {
    Aside aside = new Aside(timbers, from, brought);
    Cost sum = Cost.NONE;
    for (int i = from; i < from + brought.length; i++) {
      if (timbers.stack[i] != Timbers.NOWHERE) {
        long asideMs = aside.isAside(i) ? timbers.time.rehandleMs(1) : 0;
        long carryMs = brought[i - from] ? 0 : timbers.carryMs[i];
        sum = sum.plus(new Cost(0, 0, carryMs, timbers.pickMs[i], asideMs, 0));
      }
    }
    return sum;
  }
}
