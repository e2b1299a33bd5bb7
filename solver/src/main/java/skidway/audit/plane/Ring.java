package skidway.audit.plane;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Point;

/** Joins points to segments: closed round a shape, or open along a line. */
public final class Ring {
  private Ring() {}

  /** The sides of a closed shape, the last corner joined to the first. */
  public static List<Segment> segments(List<Point> corners) {
    List<Segment> sides = new ArrayList<>(line(corners));
    sides.add(new Segment(corners.get(corners.size() - 1), corners.get(0)));
    return sides;
  }

  /** The pieces of an open line. */
  public static List<Segment> line(List<Point> points) {
    List<Segment> pieces = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      pieces.add(new Segment(points.get(i - 1), points.get(i)));
    }
    return pieces;
  }
}
