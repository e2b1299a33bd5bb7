package skidway.geometry;

import java.util.List;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import skidway.site.Footprint;
import skidway.site.Outline;

/**
 * Measures how footprints lie to an outline of any shape, prepared once and asked often.
 *
 * <p>Distances are distances between the shapes themselves, never tests against a widened outline,
 * so round corners cost no accuracy. A footprint that reaches over a line by no more than {@link
 * Rectangle#TOUCH_M} counts as touching it.
 */
public final class Area {
  private final Polygon polygon;
  private final PreparedGeometry prepared;

  private Area(Polygon polygon) {
    this.polygon = polygon;
    prepared = PreparedGeometryFactory.prepare(polygon);
  }

  public static Area of(Outline outline) {
    return new Area(Shapes.polygon(outline));
  }

  public static List<Area> all(List<Outline> outlines) {
    return outlines.stream().map(Area::of).toList();
  }

  /** Whether the footprint lies wholly in the area; it may touch the outline from inside. */
  public boolean contains(Footprint footprint) {
    return prepared.covers(inner(footprint));
  }

  /** Whether the interiors meet; touching does not count. */
  public boolean meets(Footprint footprint) {
    return prepared.intersects(inner(footprint));
  }

  /** Distance between the footprint and the area, 0 when they touch or overlap. */
  public double gapM(Footprint footprint) {
    return polygon.distance(Shapes.polygon(footprint));
  }

  /** Distance between the footprint and the outline's line, from inside or from outside. */
  public double edgeGapM(Footprint footprint) {
    return polygon.getExteriorRing().distance(Shapes.polygon(footprint));
  }

  /** Whether the footprint comes nearer to the area than a limit. */
  public boolean isNearer(Footprint footprint, double limitM) {
    return polygon.isWithinDistance(Shapes.polygon(footprint), limitM - Rectangle.TOUCH_M);
  }

  /** Whether the footprint comes nearer to the outline's line than a limit. */
  public boolean isEdgeNearer(Footprint footprint, double limitM) {
    return polygon
        .getExteriorRing()
        .isWithinDistance(Shapes.polygon(footprint), limitM - Rectangle.TOUCH_M);
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

  private static Polygon inner(Footprint footprint) {
    double by = 2 * Rectangle.TOUCH_M;
    return Shapes.polygon(
        footprint.resized(
            Math.max(footprint.lengthM() - by, footprint.lengthM() / 2),
            Math.max(footprint.widthM() - by, footprint.widthM() / 2)));
  }
}
