package skidway.sheet;

import skidway.site.Footprint;
import skidway.site.Point;
import skidway.site.Spot;

/** Marks the side people take pieces from: pairs of soles in the open strip, toes to the stack. */
final class Soles {
  private static final double EVERY = 9;
  private static final double HEIGHT = 3.2;
  private static final String PAIR = shoe(-0.56) + shoe(0.56);

  private Soles() {}

  static void draw(Drawing drawing, Spot spot, Frame frame) {
    Footprint strip = spot.strip();
    double size = Math.min(1, frame.mm(strip.widthM()) / HEIGHT);
    double room = frame.mm(strip.lengthM());
    if (size < 0.45) {
      return;
    }
    int pairs = (int) Math.max(1, Math.floor(room / EVERY));
    for (int i = 0; i < pairs; i++) {
      double along = strip.lengthM() * ((i + 0.5) / pairs - 0.5);
      Point at = strip.centre().plus(strip.along().times(along));
      pair(drawing, frame.at(at), angleDeg(spot), size);
    }
  }

  static void pair(Drawing drawing, PagePoint at, double angleDeg, double size) {
    drawing.path(
        PAIR,
        "fill",
        Palette.INK,
        "transform",
        "translate("
            + Numbers.of(at.x())
            + " "
            + Numbers.of(at.y())
            + ") rotate("
            + Numbers.of(angleDeg)
            + ") scale("
            + Numbers.of(size)
            + ")");
  }

  /** Clockwise from toes up. */
  private static double angleDeg(Spot spot) {
    Point toStack = spot.towardsOpenSide().times(-1);
    return Math.toDegrees(Math.atan2(toStack.x(), toStack.y()));
  }

  private static String shoe(double x) {
    return oval(x, -0.4, 0.4, 0.72) + oval(x, 0.82, 0.32, 0.36);
  }

  private static String oval(double x, double y, double rx, double ry) {
    String arc = "a" + rx + "," + ry + " 0 1 0 ";
    return "M"
        + Numbers.of(x - rx)
        + ","
        + Numbers.of(y)
        + " "
        + arc
        + Numbers.of(2 * rx)
        + ",0 "
        + arc
        + Numbers.of(-2 * rx)
        + ",0 Z ";
  }
}
