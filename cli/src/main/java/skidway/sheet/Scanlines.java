package skidway.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the stretches of parallel lines that lie within a polygon, for hatching it. Real lines
 * instead of a repeated picture keep a print sharp and its file small, and any viewer draws them.
 */
final class Scanlines {
  private Scanlines() {}

  /**
   * The stretches as path data.
   *
   * @param angleDeg direction of the lines, clockwise from level
   * @param spacing from line to line, mm
   */
  static String in(List<PagePoint> polygon, double angleDeg, double spacing) {
    // Half a step off, so that lines do not run along the edges of things drawn at round places.
    return stretches(polygon, angleDeg, spacing, spacing / 2);
  }

  /** The same, with one of the lines through a point. */
  static String through(PagePoint point, List<PagePoint> polygon, double angleDeg, double spacing) {
    double radians = Math.toRadians(angleDeg);
    double y = turned(point, Math.cos(radians), -Math.sin(radians)).y();
    return stretches(polygon, angleDeg, spacing, y);
  }

  private static String stretches(
      List<PagePoint> polygon, double angleDeg, double spacing, double offset) {
    double cos = Math.cos(Math.toRadians(angleDeg));
    double sin = Math.sin(Math.toRadians(angleDeg));
    List<PagePoint> level = polygon.stream().map(p -> turned(p, cos, -sin)).toList();
    Box box = Box.of(level);
    StringBuilder path = new StringBuilder();
    long first = (long) Math.ceil((box.y0() - offset) / spacing);
    for (long row = first; row * spacing + offset < box.y1(); row++) {
      double y = row * spacing + offset;
      List<Double> crossings = crossings(level, y);
      for (int i = 0; i + 1 < crossings.size(); i += 2) {
        append(path, 'M', turned(new PagePoint(crossings.get(i), y), cos, sin));
        append(path, 'L', turned(new PagePoint(crossings.get(i + 1), y), cos, sin));
      }
    }
    return path.toString();
  }

  private static List<Double> crossings(List<PagePoint> polygon, double y) {
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      PagePoint a = polygon.get(i);
      PagePoint b = polygon.get((i + 1) % polygon.size());
      if ((a.y() > y) != (b.y() > y)) {
        all.add(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
      }
    }
    all.sort(null);
    return all;
  }

  private static PagePoint turned(PagePoint p, double cos, double sin) {
    return new PagePoint(p.x() * cos - p.y() * sin, p.x() * sin + p.y() * cos);
  }

  private static void append(StringBuilder path, char command, PagePoint p) {
    path.append(command).append(Numbers.of(p.x())).append(',').append(Numbers.of(p.y()));
  }
}
