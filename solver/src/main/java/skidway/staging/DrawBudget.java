package skidway.staging;

/**
 * How many moves a search may still draw. Moves that break a rule cost no score calculation, so a
 * count of calculations alone would not bound the work on a site where little is allowed.
 */
final class DrawBudget {
  /** Draws for each score calculation of a search. */
  private static final int PER_CALCULATION = 40;

  private long left;

  DrawBudget(long calculations) {
    left = Math.multiplyExact(calculations, PER_CALCULATION);
  }

  /** Takes one draw off; false when none is left. */
  boolean draw() {
    return left-- > 0;
  }
}
