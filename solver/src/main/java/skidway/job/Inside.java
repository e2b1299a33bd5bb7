package skidway.job;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * Checks that lines lie within an outline. Each line is cut where the outline's sides meet it; it
 * is inside if the middle of every part is, on the edge counting as inside.
 */
final class Inside {
  private final List<Segment> sides;

  private Inside(List<Segment> sides) {
    this.sides = sides;
  }

  static Inside of(Outline outline) {
    return new Inside(OutlineCheck.sides(outline));
  }

  /** Reports an outline that is not wholly inside. */
  void check(Place place, String what, Outline outline, String container, Fields fields) {
    check(place, what, OutlineCheck.sides(outline), container, fields);
  }

  /** Reports lines that are not wholly inside. */
  void check(Place place, String what, List<Segment> lines, String container, Fields fields) {
    if (!lines.stream().allMatch(this::holds)) {
      fields.report(
          place,
          what + " reaching beyond " + container,
          "it lies wholly within " + container,
          "correct its corners, or those of " + container);
    }
  }

  boolean holds(Segment line) {
    return holds(line.a()) && holds(line.b()) && middles(line).stream().allMatch(this::holds);
  }

  /** Whether a point is inside and not on the edge. */
  boolean holdsWithin(Point p) {
    return holds(p) && sides.stream().noneMatch(side -> side.holds(p));
  }

  /** The middles of the parts that the outline's sides cut a line into. */
  List<Point> middles(Segment line) {
    List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
    for (Segment side : sides) {
      if (line.crosses(side)) {
        cuts.add(line.shareWhereCrossed(side));
      }
      for (Point end : List.of(side.a(), side.b())) {
        double share = line.shareOf(end);
        if (line.holds(end) && share > 0 && share < 1) {
          cuts.add(share);
        }
      }
    }
    cuts.sort(Double::compare);
    List<Point> middles = new ArrayList<>();
    for (int i = 1; i < cuts.size(); i++) {
      middles.add(line.at((cuts.get(i - 1) + cuts.get(i)) / 2));
    }
    return middles;
  }

  boolean holds(Point p) {
    boolean inside = false;
    for (Segment side : sides) {
      if (side.holds(p)) {
        return true;
      }
      Point a = side.a();
      Point b = side.b();
      boolean spans = a.y() > p.y() != b.y() > p.y();
      if (spans && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }
}
