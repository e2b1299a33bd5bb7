package skidway.audit.plane;

import java.util.List;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * A closed polygon without holes, convex or not, and how a rectangle lies to it: as an obstacle to
 * stay away from ({@link #separation}) or as an area to stay in ({@link #inset}).
 */
public final class Polygon {
  private final List<Segment> sides;

  private Polygon(Outline outline) {
    sides = Ring.segments(outline.corners());
  }

  public static Polygon of(Outline outline) {
    return new Polygon(outline);
  }

  public List<Segment> sides() {
    return sides;
  }

  /** Whether a point lies inside, by counting crossings; on the boundary either answer is given. */
  public boolean contains(Point p) {
    boolean inside = false;
    for (Segment s : sides) {
      boolean spans = (s.a().y() > p.y()) != (s.b().y() > p.y());
      if (spans) {
        double share = (p.y() - s.a().y()) / (s.b().y() - s.a().y());
        inside ^= p.x() < s.a().x() + share * (s.b().x() - s.a().x());
      }
    }
    return inside;
  }

  /** Distance from the polygon's area; 0 inside. */
  public double distanceTo(Point p) {
    if (contains(p)) {
      return 0;
    }
    return sides.stream().mapToDouble(s -> s.distanceTo(p)).min().orElseThrow();
  }

  /**
   * Signed distance of a rectangle from the polygon's area: negative where they overlap, by how
   * deep the polygon's boundary enters the rectangle, or by how deep the rectangle lies inside.
   */
  public double separation(Rectangle r) {
    double depth = depth(r);
    if (depth > 0) {
      return -depth;
    }
    return contains(r.centre()) ? -boundaryDistance(r) - r.shorterSideM() : boundaryDistance(r);
  }

  /**
   * Distance of a rectangle inside from the polygon's boundary; negative when it sticks out, by how
   * far.
   */
  public double inset(Rectangle r) {
    double depth = depth(r);
    if (depth > 0) {
      double out = r.corners().stream().mapToDouble(this::distanceTo).max().orElseThrow();
      return -Math.max(depth, out);
    }
    return contains(r.centre()) ? boundaryDistance(r) : -boundaryDistance(r) - r.shorterSideM();
  }

  private double depth(Rectangle r) {
    return sides.stream().mapToDouble(r::depthOf).max().orElseThrow();
  }

  private double boundaryDistance(Rectangle r) {
    return sides.stream().mapToDouble(r::distanceTo).min().orElseThrow();
  }
}
