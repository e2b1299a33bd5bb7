package skidway.staging;

import skidway.plan.Effort;

/** Splits the prices of the board into crew time by kind. */
final class Efforts {
  private Efforts() {}

  /**
   * Carry, racking, and machine or hands that unload, of a bundle on a spot; for one that lies
   * already, moving it.
   */
  static Effort ofBundle(Board board, int bundle, int spot) {
    long rack = board.rack[spot] && !board.lies(bundle) ? board.rackMs[bundle] : 0;
    long carry = board.carryMs[bundle][spot];
    long machine = board.placeMs[bundle][spot] - carry - rack;
    if (board.byHand()) {
      return new Effort(seconds(carry), 0, seconds(rack), 0, 0, 0, seconds(machine));
    }
    return board.lies(bundle)
        ? new Effort(seconds(carry), 0, 0, 0, 0, seconds(machine))
        : new Effort(seconds(carry), 0, seconds(rack), 0, seconds(machine));
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
