package skidway.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import skidway.site.Outline;
import skidway.site.Point;

/** Reads the texts that tests describe shapes with. */
final class Wkt {
  private Wkt() {}

  static Geometry read(String wkt) {
    try {
      return new WKTReader(Shapes.FACTORY).read(wkt);
    } catch (ParseException e) {
      throw new IllegalArgumentException("Not a shape: " + wkt, e);
    }
  }

  static List<Point> points(String wkt) {
    List<Point> points = new ArrayList<>();
    for (Coordinate c : read(wkt).getCoordinates()) {
      points.add(new Point(c.x, c.y));
    }
    return points;
  }

  static Outline outline(String polygon) {
    List<Point> ring = points(polygon);
    return new Outline(ring.subList(0, ring.size() - 1));
  }

  static List<Outline> outlines(String multiPolygon) {
    Geometry all = read(multiPolygon);
    List<Outline> outlines = new ArrayList<>();
    for (int i = 0; i < all.getNumGeometries(); i++) {
      List<Point> ring = new ArrayList<>();
      Coordinate[] corners = all.getGeometryN(i).getCoordinates();
      Arrays.stream(corners, 0, corners.length - 1).forEach(c -> ring.add(new Point(c.x, c.y)));
      outlines.add(new Outline(ring));
    }
    return outlines;
  }
}
