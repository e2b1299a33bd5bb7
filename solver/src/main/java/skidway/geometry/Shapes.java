package skidway.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import skidway.site.Footprint;
import skidway.site.Outline;
import skidway.site.Point;

/** Turns records of the site into shapes of the geometry library, one site metre to one unit. */
final class Shapes {
  static final GeometryFactory FACTORY = new GeometryFactory();

  private Shapes() {}

  static Polygon polygon(Outline outline) {
    List<Coordinate> ring = coordinates(outline.corners());
    ring.add(ring.get(0).copy());
    return FACTORY.createPolygon(ring.toArray(new Coordinate[0]));
  }

  static Polygon polygon(Footprint footprint) {
    return polygon(footprint.outline());
  }

  static LineString line(List<Point> points) {
    return FACTORY.createLineString(coordinates(points).toArray(new Coordinate[0]));
  }

  static org.locationtech.jts.geom.Point point(Point point) {
    return FACTORY.createPoint(new Coordinate(point.x(), point.y()));
  }

  private static List<Coordinate> coordinates(List<Point> points) {
    List<Coordinate> list = new ArrayList<>();
    for (Point point : points) {
      list.add(new Coordinate(point.x(), point.y()));
    }
    return list;
  }
}
