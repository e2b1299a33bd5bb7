package skidway.layout;

import java.util.List;
import skidway.site.Point;

/** Axes turned to a heading: x along the spots, y across them, both from the site's origin. */
record Frame(double headingDeg) {
  Point toLocal(Point site) {
    Point along = Point.unit(headingDeg);
    Point across = along.turnedLeft();
    return new Point(
        site.x() * along.x() + site.y() * along.y(), site.x() * across.x() + site.y() * across.y());
  }

  Point toSite(Point local) {
    Point along = Point.unit(headingDeg);
    return along.times(local.x()).plus(along.turnedLeft().times(local.y()));
  }

  /** The box round some points, seen in this frame. */
  Box box(List<Point> points) {
    List<Point> local = points.stream().map(this::toLocal).toList();
    return new Box(
        Span.of(local.stream().mapToDouble(Point::x).toArray()),
        Span.of(local.stream().mapToDouble(Point::y).toArray()));
  }

  /** What something covers along and across. */
  record Box(Span along, Span across) {
    Box grown(double byM) {
      return new Box(along.grown(byM), across.grown(byM));
    }

    boolean meets(Box other) {
      return along.meets(other.along) && across.meets(other.across);
    }
  }
}
