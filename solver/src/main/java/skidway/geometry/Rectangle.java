package skidway.geometry;

import skidway.site.Footprint;
import skidway.site.Point;

/**
 * Measures how a footprint lies to other footprints, exactly and fast: a search asks this millions
 * of times.
 *
 * <p>Two rectangles are apart if they are apart seen along one of their four sides' directions; the
 * nearest points of two rectangles apart include a corner of one of them. Both need only the
 * half-sizes in the other's axes. Constant time.
 *
 * @see Area for outlines that are no rectangles
 */
public final class Rectangle {
  /** Overlaps up to this depth count as touching, which every rule allows. */
  public static final double TOUCH_M = 0.001;

  private final Point centre;
  private final Point along;
  private final Point across;
  private final double halfLengthM;
  private final double halfWidthM;

  private Rectangle(Footprint footprint) {
    centre = footprint.centre();
    along = footprint.along();
    across = along.turnedLeft();
    halfLengthM = footprint.lengthM() / 2;
    halfWidthM = footprint.widthM() / 2;
  }

  public static Rectangle of(Footprint footprint) {
    return new Rectangle(footprint);
  }

  /** Distance between the two, 0 when they touch or overlap. */
  public double gapM(Rectangle other) {
    if (separationM(other) <= 0) {
      return 0;
    }
    return Math.min(nearestCornerM(other), other.nearestCornerM(this));
  }

  /** The least shift that would part the two, 0 when they are apart or touch. */
  public double overlapM(Rectangle other) {
    return Math.max(0, -separationM(other));
  }

  /** Whether the interiors meet; touching does not count. */
  public boolean meets(Rectangle other) {
    return separationM(other) < -TOUCH_M;
  }

  /** The widest gap seen along any side's direction; negative when the rectangles overlap. */
  private double separationM(Rectangle other) {
    Point way = other.centre.minus(centre);
    return Math.max(
        Math.max(gapAlongM(along, way, other), gapAlongM(across, way, other)),
        Math.max(gapAlongM(other.along, way, other), gapAlongM(other.across, way, other)));
  }

  private double gapAlongM(Point axis, Point way, Rectangle other) {
    return Math.abs(dot(way, axis)) - reachM(axis) - other.reachM(axis);
  }

  private double reachM(Point axis) {
    return halfLengthM * Math.abs(dot(along, axis)) + halfWidthM * Math.abs(dot(across, axis));
  }

  /** Distance from this rectangle to the nearest corner of the other. */
  private double nearestCornerM(Rectangle other) {
    Point middle = other.centre.minus(centre);
    Point a = other.along.times(other.halfLengthM);
    Point b = other.across.times(other.halfWidthM);
    return Math.min(
        Math.min(fromM(middle.plus(a).plus(b)), fromM(middle.plus(a).minus(b))),
        Math.min(fromM(middle.minus(a).plus(b)), fromM(middle.minus(a).minus(b))));
  }

  private double fromM(Point way) {
    double beyondEnd = Math.max(0, Math.abs(dot(way, along)) - halfLengthM);
    double beyondSide = Math.max(0, Math.abs(dot(way, across)) - halfWidthM);
    return Math.hypot(beyondEnd, beyondSide);
  }

  private static double dot(Point a, Point b) {
    return a.x() * b.x() + a.y() * b.y();
  }
}
