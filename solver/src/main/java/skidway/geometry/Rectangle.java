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

  private Rectangle(Point centre, Point along, double halfLengthM, double halfWidthM) {
    this.centre = centre;
    this.along = along;
    this.across = along.turnedLeft();
    this.halfLengthM = halfLengthM;
    this.halfWidthM = halfWidthM;
  }

  public static Rectangle of(Footprint footprint) {
    return new Rectangle(
        footprint.centre(), footprint.along(), footprint.lengthM() / 2, footprint.widthM() / 2);
  }

  /** The inside that must not meet anything: less what counts as touching, on every side. */
  Rectangle shrunk() {
    return new Rectangle(
        centre,
        along,
        Math.max(halfLengthM - TOUCH_M, halfLengthM / 2),
        Math.max(halfWidthM - TOUCH_M, halfWidthM / 2));
  }

  Point centre() {
    return centre;
  }

  /** Distance from the centre to the corners. */
  double radiusM() {
    return Math.sqrt(halfLengthM * halfLengthM + halfWidthM * halfWidthM);
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
    return Math.abs(way.dot(axis)) - reachM(axis) - other.reachM(axis);
  }

  private double reachM(Point axis) {
    return halfLengthM * Math.abs(along.dot(axis)) + halfWidthM * Math.abs(across.dot(axis));
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
    return outsideM(new Point(way.dot(along), way.dot(across)));
  }

  /** Distance from this rectangle to a point seen in its own axes. */
  private double outsideM(Point local) {
    double beyondEnd = Math.max(0, Math.abs(local.x()) - halfLengthM);
    double beyondSide = Math.max(0, Math.abs(local.y()) - halfWidthM);
    return Math.sqrt(beyondEnd * beyondEnd + beyondSide * beyondSide);
  }

  /** Distance to the straight line between two points, 0 when it touches or crosses. */
  double gapToM(Point from, Point to) {
    Point a = local(from);
    Point b = local(to);
    if (crosses(a, b)) {
      return 0;
    }
    double ends = Math.min(outsideM(a), outsideM(b));
    double right = Math.min(cornerM(a, b, 1, 1), cornerM(a, b, 1, -1));
    double left = Math.min(cornerM(a, b, -1, 1), cornerM(a, b, -1, -1));
    return Math.min(ends, Math.min(left, right));
  }

  private Point local(Point site) {
    Point way = site.minus(centre);
    return new Point(way.dot(along), way.dot(across));
  }

  /** Clips the line between two points, seen from this rectangle, at its four sides. */
  private boolean crosses(Point a, Point b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double enter = 0;
    double leave = 1;
    double[] steps = {-dx, dx, -dy, dy};
    double[] rooms = {
      a.x() + halfLengthM, halfLengthM - a.x(), a.y() + halfWidthM, halfWidthM - a.y()
    };
    for (int side = 0; side < 4; side++) {
      if (steps[side] == 0 && rooms[side] < 0) {
        return false;
      } else if (steps[side] < 0) {
        enter = Math.max(enter, rooms[side] / steps[side]);
      } else if (steps[side] > 0) {
        leave = Math.min(leave, rooms[side] / steps[side]);
      }
    }
    return enter <= leave;
  }

  /** Distance from one of the corners to the line between two points. */
  private double cornerM(Point a, Point b, int end, int side) {
    double x = end * halfLengthM - a.x();
    double y = side * halfWidthM - a.y();
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double squared = dx * dx + dy * dy;
    double share = squared == 0 ? 0 : Math.max(0, Math.min(1, (x * dx + y * dy) / squared));
    double missX = x - share * dx;
    double missY = y - share * dy;
    return Math.sqrt(missX * missX + missY * missY);
  }
}
