package skidway.site;

import java.util.List;

/**
 * A closed polygon without holes: its corners in order, the last joined to the first. Whether it
 * crosses itself is checked where it is read.
 */
public record Outline(List<Point> corners) {
  public Outline {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException(
          "An outline needs at least 3 corners, found " + corners.size());
    }
  }

  /** Area in m², positive whatever the direction of the corners. */
  public double areaM2() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }

  /** An upright rectangle. */
  public static Outline box(double x0, double y0, double x1, double y1) {
    return new Outline(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
  }
}
