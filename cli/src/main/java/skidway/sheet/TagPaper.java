package skidway.sheet;

import skidway.units.UnitSystem;

/** The paper tags are printed on, standing. */
public enum TagPaper {
  A4("A4", 210, 297),
  LETTER("letter", 215.9, 279.4);

  private final String cssName;
  private final double widthMm;
  private final double heightMm;

  TagPaper(String cssName, double widthMm, double heightMm) {
    this.cssName = cssName;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** What is in the printer where people build in these units. */
  public static TagPaper usualWith(UnitSystem units) {
    return units == UnitSystem.US ? LETTER : A4;
  }

  String cssName() {
    return cssName;
  }

  double widthMm() {
    return widthMm;
  }

  double heightMm() {
    return heightMm;
  }
}
