package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Lane;
import skidway.site.Outline;
import skidway.site.Point;

/** Works out the outline of a lane from its centre line and width, with pointed bends. */
final class Band {
  /** A bend's point goes no further out than this many half widths. */
  private static final double MOST_POINTED = 2;

  private Band() {}

  static Outline of(Lane lane) {
    List<Point> line = lane.centreLine();
    List<Point> left = new ArrayList<>();
    List<Point> right = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      Point before = direction(line, Math.max(0, i - 1));
      Point after = direction(line, Math.min(line.size() - 2, i));
      Point side = sideways(before, after).times(lane.widthM() / 2);
      left.add(line.get(i).plus(side));
      right.add(0, line.get(i).minus(side));
    }
    left.addAll(right);
    return new Outline(left);
  }

  private static Point direction(List<Point> line, int from) {
    Point way = line.get(from + 1).minus(line.get(from));
    return way.length() > 0 ? way.times(1 / way.length()) : new Point(1, 0);
  }

  private static Point sideways(Point before, Point after) {
    Point sum = before.turnedLeft().plus(after.turnedLeft());
    double length = sum.length();
    if (length < 1e-6) {
      return before.turnedLeft();
    }
    return sum.times(Math.min(2 / length, MOST_POINTED) / length);
  }
}
