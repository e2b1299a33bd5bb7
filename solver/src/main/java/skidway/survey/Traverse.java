package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Point;

/**
 * A walk round a house along its walls that ought to end where it began: each leg a step in the
 * drawing, metres. What is left over is the misclosure; its length beside the length of the walk is
 * how well it closes.
 */
record Traverse(List<Point> legs) {
  Traverse {
    legs = List.copyOf(legs);
  }

  /** Where the walk ends, seen from where it began. */
  Point misclosure() {
    return legs.stream().reduce(new Point(0, 0), Point::plus);
  }

  double lengthM() {
    return legs.stream().mapToDouble(Point::length).sum();
  }

  /** The {@code n} of {@code 1:n}; infinite for a walk that closes exactly. */
  double ratio() {
    return lengthM() / misclosure().length();
  }

  /**
   * The same walk, closed by the compass rule: each leg takes the share of the misclosure that it
   * has of the whole length.
   */
  Traverse closed() {
    Point over = misclosure();
    double lengthM = lengthM();
    return new Traverse(
        legs.stream().map(leg -> leg.minus(over.times(leg.length() / lengthM))).toList());
  }

  /** The points it goes through from a start, without the last, which is the start again. */
  List<Point> points(Point start) {
    List<Point> points = new ArrayList<>(List.of(start));
    for (Point leg : legs.subList(0, legs.size() - 1)) {
      points.add(points.get(points.size() - 1).plus(leg));
    }
    return points;
  }
}
