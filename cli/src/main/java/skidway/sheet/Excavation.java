package skidway.sheet;

import java.util.List;

/** Draws an open trench or pit with the ground beside it that must not be loaded. */
final class Excavation {
  /** From one tick along the edge to the next, mm. */
  private static final double STEP = 1.6;

  private static final double TICK = 1.3;

  private Excavation() {}

  /** Ticks from the edge down the side of the hole, as maps draw a cutting. */
  static void drawHole(Drawing drawing, List<PagePoint> corners) {
    drawing.polygon(
        corners, "fill", Palette.PAPER, "stroke", Palette.KEEP_CLEAR, "stroke-width", "0.5");
    double turn = clockwise(corners) ? 1 : -1;
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < corners.size(); i++) {
      PagePoint a = corners.get(i);
      PagePoint b = corners.get((i + 1) % corners.size());
      double lengthMm = a.distanceTo(b);
      int ticks = (int) Math.floor(lengthMm / STEP);
      for (int k = 0; k < ticks; k++) {
        PagePoint at = a.towards(b, (k + 0.5) / ticks);
        double reach = k % 2 == 0 ? TICK : TICK / 2;
        double x = at.x() - turn * (b.y() - a.y()) / lengthMm * reach;
        double y = at.y() + turn * (b.x() - a.x()) / lengthMm * reach;
        path.append('M').append(Drawing.list(List.of(at)));
        path.append('L').append(Drawing.list(List.of(new PagePoint(x, y))));
      }
    }
    if (!path.isEmpty()) {
      drawing.path(path.toString(), "stroke", Palette.KEEP_CLEAR, "stroke-width", "0.3");
    }
  }

  /** Seen on paper, where y grows downwards. */
  private static boolean clockwise(List<PagePoint> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      PagePoint a = corners.get(i);
      PagePoint b = corners.get((i + 1) % corners.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice > 0;
  }
}
