package skidway.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import skidway.site.Outline;
import skidway.site.Point;

/** Reads an outline and checks that it has an area and does not meet itself. */
final class OutlineCheck {
  private static final double LEAST_AREA_M2 = 0.01;
  private static final double SAME_CORNER_M = 0.001;

  private OutlineCheck() {}

  static Outline simple(Fields fields, String name) {
    int before = fields.problemCount();
    Outline outline = Points.outline(fields, name);
    if (fields.problemCount() == before) {
      check(fields, name, outline);
    }
    return outline;
  }

  static List<Segment> sides(Outline outline) {
    List<Point> corners = outline.corners();
    List<Segment> sides = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      sides.add(new Segment(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return sides;
  }

  private static void check(Fields fields, String name, Outline outline) {
    List<Segment> sides = sides(outline);
    for (int i = 0; i < sides.size(); i++) {
      if (sides.get(i).length() < SAME_CORNER_M) {
        fields.report(
            fields.at(name),
            "an outline whose corner " + (i + 1) + " is also the next one",
            "each corner stands once; the last is joined to the first",
            "remove one of the two");
        return;
      }
    }
    for (int i = 0; i < sides.size(); i++) {
      for (int j = i + 1; j < sides.size(); j++) {
        if (meet(sides, i, j)) {
          fields.report(
              fields.at(name),
              String.format(Locale.ROOT, "an outline whose sides %d and %d meet", i + 1, j + 1),
              "an outline goes round once and does not touch or cross itself",
              "put the corners in the order of a walk round it, each once");
          return;
        }
      }
    }
    if (outline.areaM2() < LEAST_AREA_M2) {
      fields.report(
          fields.at(name),
          "an outline without an area",
          "its corners go round something",
          "correct the corners");
    }
  }

  /** Neighbours share a corner, so they meet only if one folds back or has no length. */
  private static boolean meet(List<Segment> sides, int i, int j) {
    Segment a = sides.get(i);
    Segment b = sides.get(j);
    if (j == i + 1) {
      return a.holds(b.b()) || b.holds(a.a());
    }
    if (i == 0 && j == sides.size() - 1) {
      return a.holds(b.a()) || b.holds(a.b());
    }
    return a.meets(b);
  }
}
