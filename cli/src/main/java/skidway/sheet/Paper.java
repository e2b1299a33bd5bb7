package skidway.sheet;

/** The size of a drawing on paper, margins not counted, millimetres. */
public record Paper(double widthMm, double heightMm) {
  /** Fits on A4 and on US Letter, both lying, with margins of 7 mm or more. */
  public static final Paper LYING = new Paper(264, 194);

  private static final double LEAST_MM = 110;

  public Paper {
    if (!(widthMm >= LEAST_MM) || !(heightMm >= LEAST_MM)) {
      throw new IllegalArgumentException(
          "A drawing needs at least "
              + LEAST_MM
              + " mm each way, found "
              + widthMm
              + " by "
              + heightMm);
    }
  }

  boolean lying() {
    return widthMm > heightMm;
  }
}
