package skidway.geometry;

import java.util.List;
import skidway.site.Point;

/** Straight edges in a row, and how near footprints come to them. */
final class Edges {
  private final Point[] from;
  private final Point[] to;
  private final Point middle;
  private final double reachM;

  private Edges(List<Point> points, boolean closed) {
    int count = closed ? points.size() : points.size() - 1;
    from = new Point[count];
    to = new Point[count];
    for (int i = 0; i < count; i++) {
      from[i] = points.get(i);
      to[i] = points.get((i + 1) % points.size());
    }
    middle = points.stream().reduce(Point::plus).orElseThrow().times(1.0 / points.size());
    reachM = points.stream().mapToDouble(middle::distanceTo).max().orElse(0);
  }

  static Edges closed(List<Point> points) {
    return new Edges(points, true);
  }

  static Edges open(List<Point> points) {
    return new Edges(points, false);
  }

  /** Whether circles round the edges and the rectangle already show that the two are far apart. */
  boolean isFar(Rectangle rectangle, double limitM) {
    return rectangle.centre().distanceTo(middle) > limitM + reachM + rectangle.radiusM();
  }

  /** Distance from the rectangle to the nearest edge, 0 when an edge touches or crosses it. */
  double gapM(Rectangle rectangle) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < from.length && least > 0; i++) {
      least = Math.min(least, rectangle.gapToM(from[i], to[i]));
    }
    return least;
  }

  boolean isNearer(Rectangle rectangle, double limitM) {
    if (isFar(rectangle, limitM)) {
      return false;
    }
    for (int i = 0; i < from.length; i++) {
      if (rectangle.gapToM(from[i], to[i]) < limitM) {
        return true;
      }
    }
    return false;
  }
}
