package skidway.geometry;

import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import skidway.site.Footprint;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * Measures how footprints lie to an outline of any shape, prepared once and asked often.
 *
 * <p>Distances are distances between the shapes themselves, never tests against a widened outline,
 * so round corners cost no accuracy. A footprint that reaches over a line by no more than {@link
 * Rectangle#TOUCH_M} counts as touching it. One pass over the outline's edges; how deep an overlap
 * is takes longer and is for reports.
 */
public final class Area {
  private final Polygon polygon;
  private final Coordinate[] ring;
  private final Edges edges;

  private Area(Outline outline) {
    polygon = Shapes.polygon(outline);
    ring = polygon.getCoordinates();
    edges = Edges.closed(outline.corners());
  }

  public static Area of(Outline outline) {
    return new Area(outline);
  }

  /** Whether the footprint lies wholly in the area; it may touch the outline from inside. */
  public boolean contains(Footprint footprint) {
    Rectangle inner = Rectangle.of(footprint).shrunk();
    return holds(inner.centre()) && edges.gapM(inner) > 0;
  }

  /** Whether the interiors meet; touching does not count. */
  public boolean meets(Footprint footprint) {
    Rectangle inner = Rectangle.of(footprint).shrunk();
    return !edges.isFar(inner, 0) && (holds(inner.centre()) || edges.gapM(inner) == 0);
  }

  /** Distance between the footprint and the area, 0 when they touch or overlap. */
  public double gapM(Footprint footprint) {
    return holds(footprint.centre()) ? 0 : edgeGapM(footprint);
  }

  /** Distance between the footprint and the outline's line, from inside or from outside. */
  public double edgeGapM(Footprint footprint) {
    return edges.gapM(Rectangle.of(footprint));
  }

  /** Whether the footprint comes nearer to the outline's line than a limit. */
  public boolean isEdgeNearer(Footprint footprint, double limitM) {
    return edges.isNearer(Rectangle.of(footprint), limitM - Rectangle.TOUCH_M);
  }

  /** Least width of what the footprint and the area have in common, 0 without any. */
  public double overlapM(Footprint footprint) {
    Geometry common = polygon.intersection(Shapes.polygon(footprint));
    return common.getArea() > 0 ? new MinimumDiameter(common).getLength() : 0;
  }

  /** How far the footprint reaches out of the area at most, 0 when it lies within. */
  public double beyondM(Footprint footprint) {
    double most = 0;
    for (Coordinate corner : Shapes.polygon(footprint).difference(polygon).getCoordinates()) {
      most = Math.max(most, polygon.distance(Shapes.FACTORY.createPoint(corner)));
    }
    return most;
  }

  private boolean holds(Point point) {
    return PointLocation.isInRing(new Coordinate(point.x(), point.y()), ring);
  }
}
