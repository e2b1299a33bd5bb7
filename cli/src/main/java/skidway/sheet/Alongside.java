package skidway.sheet;

/** Turns text so that it runs along a turned rectangle and is never upside down. */
final class Alongside {
  private Alongside() {}

  /** Clockwise angle on paper at which text along a heading stands the right way up. */
  static double angleDeg(double headingDeg) {
    double angle = ((-headingDeg % 180) + 180) % 180;
    return angle > 90 ? angle - 180 : angle == 90 ? -90 : angle;
  }

  static String turn(double angleDeg, PagePoint about) {
    return "rotate("
        + Numbers.of(angleDeg)
        + " "
        + Numbers.of(about.x())
        + " "
        + Numbers.of(about.y())
        + ")";
  }
}
