package skidway.job;

import skidway.site.Point;

/** A straight line between two points, with the few questions that checking a site needs. */
record Segment(Point a, Point b) {
  /** Touching is allowed, and rounding is no mistake. */
  private static final double TOLERANCE_M = 0.001;

  /** Whether the two meet anywhere, ends included. */
  boolean meets(Segment other) {
    return crosses(other) || holds(other.a) || holds(other.b) || other.holds(a) || other.holds(b);
  }

  /** Whether each passes from one side of the other to the other side. */
  boolean crosses(Segment other) {
    return side(other.a) * side(other.b) < 0 && other.side(a) * other.side(b) < 0;
  }

  /** Whether a point lies on it, within the tolerance. */
  boolean holds(Point p) {
    return distanceTo(p) <= TOLERANCE_M;
  }

  double distanceTo(Point p) {
    return at(Math.max(0, Math.min(1, shareOf(p)))).distanceTo(p);
  }

  double length() {
    return a.distanceTo(b);
  }

  /** The point at a share of its length. */
  Point at(double share) {
    return a.plus(b.minus(a).times(share));
  }

  /** The share of the length at which a crossing segment crosses it. */
  double shareWhereCrossed(Segment other) {
    double before = other.side(a);
    double after = other.side(b);
    return before / (before - after);
  }

  /** The share of the length nearest to a point, below 0 and above 1 beyond the ends. */
  double shareOf(Point p) {
    Point way = b.minus(a);
    double square = way.x() * way.x() + way.y() * way.y();
    return square == 0 ? 0 : ((p.x() - a.x()) * way.x() + (p.y() - a.y()) * way.y()) / square;
  }

  /** Positive on the left, negative on the right, twice the area with the point. */
  private double side(Point p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }
}
