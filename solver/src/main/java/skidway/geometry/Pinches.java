package skidway.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Finds the points in which two obstacles touch: nobody passes there, though the free area on both
 * sides shares the point.
 */
final class Pinches {
  private Pinches() {}

  static List<Coordinate> of(Geometry free) {
    Set<Coordinate> once = new TreeSet<>();
    List<Coordinate> again = new ArrayList<>();
    for (Object ring : LinearComponentExtracter.getLines(free)) {
      Coordinate[] corners = ((LinearRing) ring).getCoordinates();
      for (int i = 1; i < corners.length; i++) {
        if (!once.add(corners[i])) {
          again.add(corners[i]);
        }
      }
    }
    return again;
  }
}
