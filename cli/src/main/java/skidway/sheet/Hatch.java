package skidway.sheet;

import java.util.List;

/**
 * A way of filling an area with lines or dots.
 *
 * @param angles directions of the lines, degrees clockwise from level; none for a plain area
 * @param dots gap between dots along a line, mm; 0 for whole lines
 */
record Hatch(List<Double> angles, double spacing, double weight, double dots, String ink) {
  static final Hatch NONE = new Hatch(List.of(), 1, 0, 0, Palette.INK);
  static final Hatch LANE = lines(2.4, 0.22, Palette.LANE, -45.0);
  static final Hatch KEEP_CLEAR = lines(1.4, 0.26, Palette.KEEP_CLEAR, 45.0, -45.0);

  static Hatch lines(double spacing, double weight, String ink, Double... angles) {
    return new Hatch(List.of(angles), spacing, weight, 0, ink);
  }

  static Hatch dots(double spacing, double size) {
    return new Hatch(List.of(0.0), spacing, size, spacing, Palette.INK);
  }

  /** The ends of timbers on end, packed along the rack. */
  static Hatch rack(double angleDeg) {
    return lines(1.3, 0.3, Palette.INK, angleDeg, angleDeg + 90);
  }

  void draw(Drawing drawing, List<PagePoint> polygon) {
    for (double angle : angles) {
      String path = Scanlines.in(polygon, angle, spacing);
      if (path.isEmpty()) {
        continue;
      }
      if (dots > 0) {
        drawing.path(
            path,
            "stroke",
            ink,
            "stroke-width",
            weight,
            "stroke-linecap",
            "round",
            "stroke-dasharray",
            "0 " + Numbers.of(dots),
            "stroke-dashoffset",
            -dots / 2);
      } else {
        drawing.path(path, "stroke", ink, "stroke-width", weight);
      }
    }
  }
}
