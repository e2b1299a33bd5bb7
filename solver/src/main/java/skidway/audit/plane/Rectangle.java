package skidway.audit.plane;

import java.util.List;
import skidway.site.Footprint;
import skidway.site.Point;

/**
 * A turned rectangle, measured against points, segments and other rectangles.
 *
 * <p>Distances are positive outside; a signed distance is negative where two things overlap and
 * then tells how far one has to move to be clear.
 */
public final class Rectangle {
  private final Point centre;
  private final Point along;
  private final Point left;
  private final double halfLengthM;
  private final double halfWidthM;
  private final List<Point> corners;

  private Rectangle(Footprint footprint) {
    centre = footprint.centre();
    along = footprint.along();
    left = along.turnedLeft();
    halfLengthM = footprint.lengthM() / 2;
    halfWidthM = footprint.widthM() / 2;
    corners = footprint.outline().corners();
  }

  public static Rectangle of(Footprint footprint) {
    return new Rectangle(footprint);
  }

  public Point centre() {
    return centre;
  }

  public List<Point> corners() {
    return corners;
  }

  public double shorterSideM() {
    return 2 * Math.min(halfLengthM, halfWidthM);
  }

  List<Segment> sides() {
    return Ring.segments(corners);
  }

  /** Distance of a point; 0 inside. */
  public double distanceTo(Point p) {
    double u = Math.max(0, Math.abs(dot(p, along)) - halfLengthM);
    double v = Math.max(0, Math.abs(dot(p, left)) - halfWidthM);
    return Math.hypot(u, v);
  }

  /** Distance of a segment; 0 when it touches or enters. */
  public double distanceTo(Segment s) {
    if (depthOf(s) >= 0) {
      return 0;
    }
    return sides().stream().mapToDouble(s::distanceTo).min().orElseThrow();
  }

  /**
   * How deep a segment enters: the largest distance of one of its points from the nearest side;
   * negative when it stays outside.
   *
   * <p>Along the segment the distance to each side is linear, so the deepest point is an end or a
   * place where two sides are equally far.
   */
  public double depthOf(Segment s) {
    double ua = dot(s.a(), along);
    double ub = dot(s.b(), along);
    double va = dot(s.a(), left);
    double vb = dot(s.b(), left);
    double[] atA = {halfLengthM - ua, halfLengthM + ua, halfWidthM - va, halfWidthM + va};
    double[] atB = {halfLengthM - ub, halfLengthM + ub, halfWidthM - vb, halfWidthM + vb};
    double deepest = Math.max(least(atA, atB, 0), least(atA, atB, 1));
    for (int i = 0; i < 4; i++) {
      for (int j = i + 1; j < 4; j++) {
        double slope = atB[i] - atA[i] - atB[j] + atA[j];
        double t = (atA[j] - atA[i]) / slope;
        if (t > 0 && t < 1) {
          deepest = Math.max(deepest, least(atA, atB, t));
        }
      }
    }
    return deepest;
  }

  /** Signed distance of two rectangles, by their separating axes. */
  public double separation(Rectangle other) {
    double gap =
        Math.max(
            Math.max(gapAlong(along, other), gapAlong(left, other)),
            Math.max(gapAlong(other.along, other), gapAlong(other.left, other)));
    if (gap <= 0) {
      return gap;
    }
    double nearest = Double.POSITIVE_INFINITY;
    for (Segment mine : sides()) {
      for (Segment theirs : other.sides()) {
        nearest = Math.min(nearest, mine.distanceTo(theirs));
      }
    }
    return nearest;
  }

  private double gapAlong(Point axis, Rectangle other) {
    double apart =
        Math.abs(
            (other.centre.x() - centre.x()) * axis.x()
                + (other.centre.y() - centre.y()) * axis.y());
    return apart - reach(axis) - other.reach(axis);
  }

  private double reach(Point axis) {
    return halfLengthM * Math.abs(along.x() * axis.x() + along.y() * axis.y())
        + halfWidthM * Math.abs(left.x() * axis.x() + left.y() * axis.y());
  }

  private double dot(Point p, Point axis) {
    return (p.x() - centre.x()) * axis.x() + (p.y() - centre.y()) * axis.y();
  }

  private static double least(double[] atA, double[] atB, double t) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < atA.length; i++) {
      least = Math.min(least, atA[i] + t * (atB[i] - atA[i]));
    }
    return least;
  }
}
