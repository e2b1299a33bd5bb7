package skidway.sheet;

/** The size of a drawing on paper, margins not counted, millimetres. */
public record Paper(double widthMm, double heightMm) {
  /** Fits on A4 and on US Letter, both lying, with margins of 7 mm or more. */
  public static final Paper LYING = new Paper(264, 194);

  public Paper {
    if (!(widthMm >= 120) || !(heightMm >= 120)) {
      throw new IllegalArgumentException(
          "A drawing needs at least 120 by 120 mm, found " + widthMm + " by " + heightMm);
    }
  }
}
