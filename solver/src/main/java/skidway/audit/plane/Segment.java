package skidway.audit.plane;

import skidway.site.Point;

/** A straight line from one point to another, metres. Both may be the same point. */
public record Segment(Point a, Point b) {

  /** The nearest distance from any of its points. */
  public double distanceTo(Point p) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    double along = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
    double t = Math.max(0, Math.min(1, along));
    return Math.hypot(p.x() - a.x() - t * dx, p.y() - a.y() - t * dy);
  }

  /** The nearest distance between any two of their points; 0 when they touch or cross. */
  public double distanceTo(Segment other) {
    if (crosses(other)) {
      return 0;
    }
    return Math.min(
        Math.min(distanceTo(other.a), distanceTo(other.b)),
        Math.min(other.distanceTo(a), other.distanceTo(b)));
  }

  /** Whether each passes from one side of the other to the other side; touching is not crossing. */
  boolean crosses(Segment other) {
    return side(other.a) * side(other.b) < 0 && other.side(a) * other.side(b) < 0;
  }

  /** 1 for a point on the left, -1 on the right, 0 on the line. */
  private double side(Point p) {
    return Math.signum((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x()));
  }
}
