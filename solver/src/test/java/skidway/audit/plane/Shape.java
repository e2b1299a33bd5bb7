package skidway.audit.plane;

import java.util.List;
import java.util.stream.Stream;
import skidway.site.Footprint;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * Reads shapes from short texts: points as "x y, x y", rectangles as "x y heading length width".
 */
final class Shape {
  private Shape() {}

  static List<Point> points(String text) {
    return Stream.of(text.split(",")).map(p -> point(numbers(p))).toList();
  }

  static Segment segment(String text) {
    List<Point> ends = points(text);
    return new Segment(ends.get(0), ends.get(1));
  }

  static Polygon polygon(String text) {
    return Polygon.of(new Outline(points(text)));
  }

  static Rectangle rectangle(String text) {
    double[] n = numbers(text);
    return Rectangle.of(new Footprint(point(n), n[2], n[3], n[4]));
  }

  private static Point point(double[] n) {
    return new Point(n[0], n[1]);
  }

  private static double[] numbers(String text) {
    return Stream.of(text.trim().split(" +")).mapToDouble(Double::parseDouble).toArray();
  }
}
