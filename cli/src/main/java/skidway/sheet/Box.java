package skidway.sheet;

import java.util.List;

/** An upright rectangle on paper, millimetres; y grows downwards. */
record Box(double x0, double y0, double x1, double y1) {

  static Box at(double x, double y, double width, double height) {
    return new Box(x, y, x + width, y + height);
  }

  static Box around(PagePoint centre, double width, double height) {
    return at(centre.x() - width / 2, centre.y() - height / 2, width, height);
  }

  static Box of(List<PagePoint> points) {
    double x0 = points.stream().mapToDouble(PagePoint::x).min().orElseThrow();
    double y0 = points.stream().mapToDouble(PagePoint::y).min().orElseThrow();
    double x1 = points.stream().mapToDouble(PagePoint::x).max().orElseThrow();
    double y1 = points.stream().mapToDouble(PagePoint::y).max().orElseThrow();
    return new Box(x0, y0, x1, y1);
  }

  List<PagePoint> corners() {
    return List.of(
        new PagePoint(x0, y0), new PagePoint(x1, y0), new PagePoint(x1, y1), new PagePoint(x0, y1));
  }

  double width() {
    return x1 - x0;
  }

  double height() {
    return y1 - y0;
  }

  double area() {
    return width() * height();
  }

  PagePoint centre() {
    return new PagePoint((x0 + x1) / 2, (y0 + y1) / 2);
  }

  Box grown(double by) {
    return new Box(x0 - by, y0 - by, x1 + by, y1 + by);
  }

  boolean contains(Box other) {
    return x0 <= other.x0 && y0 <= other.y0 && x1 >= other.x1 && y1 >= other.y1;
  }

  /** Area that both cover, mm²; 0 when they only touch. */
  double overlap(Box other) {
    double across = Math.min(x1, other.x1) - Math.max(x0, other.x0);
    double down = Math.min(y1, other.y1) - Math.max(y0, other.y0);
    return across > 0 && down > 0 ? across * down : 0;
  }

  /** The point of the box that is nearest to another point. */
  PagePoint nearest(PagePoint p) {
    return new PagePoint(Math.max(x0, Math.min(x1, p.x())), Math.max(y0, Math.min(y1, p.y())));
  }
}
