package skidway.staging;

import skidway.plan.Effort;

/** Splits the prices of the board into crew time by kind. */
final class Efforts {
  private Efforts() {}

  /**
   * Carry, machine or hands that unload, and racking or digging of a bundle on a spot; for one that
   * lies already, moving it.
   */
  static Effort ofBundle(Board board, int bundle, int spot) {
    long rack = board.rack[spot] && !board.lies(bundle) ? board.rackMs[bundle] : 0;
    long inside = board.rack[spot] ? 0 : board.insideMs[bundle];
    long carry = board.carryMs[bundle][spot];
    long bring = board.placeMs[bundle][spot] - carry - rack - inside;
    return brought(board, bundle, carry, rack, bring).withInside(seconds(inside));
  }

  private static Effort brought(Board board, int bundle, long carry, long rack, long bring) {
    if (board.byHand()) {
      return new Effort(seconds(carry), 0, seconds(rack), 0, 0).withOffTruck(seconds(bring));
    }
    return board.lies(bundle)
        ? new Effort(seconds(carry), 0, 0, 0, 0, seconds(bring))
        : new Effort(seconds(carry), 0, seconds(rack), 0, seconds(bring));
  }

  /** Rehandles and set-downs within a stack. */
  static Effort ofStack(StackCost stack) {
    return new Effort(
        0,
        seconds(stack.pickMs()),
        seconds(stack.rehandleMs()),
        seconds(stack.setDownMs()),
        0,
        seconds(stack.liftAsideMs()));
  }

  static double seconds(long millis) {
    return millis / 1000.0;
  }
}
