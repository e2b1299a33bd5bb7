package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Point;

/** Corners round a house, counter-clockwise, and lines beside its sides. */
record Ring(List<Point> corners) {
  /** Sides that turn less than this are one straight line; their lines do not meet anywhere. */
  private static final double STRAIGHT = 1e-9;

  Ring {
    corners = List.copyOf(corners);
  }

  /** Twice the area; negative when the corners go round clockwise. */
  double twiceAreaM2() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      twice += corner(i).cross(corner(i + 1));
    }
    return twice;
  }

  Point corner(int i) {
    return corners.get(Math.floorMod(i, corners.size()));
  }

  /** Unit vector along the side that begins at a corner. */
  Point along(int i) {
    Point way = corner(i + 1).minus(corner(i));
    return way.times(1 / way.length());
  }

  /**
   * Where the lines beside the sides meet.
   *
   * @param inM how far each line lies inside its side, metres, outside when negative
   */
  Ring inside(List<Double> inM) {
    List<Point> moved = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      double before = inM.get(Math.floorMod(i - 1, inM.size()));
      moved.add(meet(i, before, inM.get(i)));
    }
    return new Ring(moved);
  }

  private Point meet(int i, double beforeM, double afterM) {
    Point a = along(i - 1);
    Point b = along(i);
    Point onBefore = corner(i).plus(a.turnedLeft().times(beforeM));
    Point onAfter = corner(i).plus(b.turnedLeft().times(afterM));
    double turn = a.cross(b);
    if (Math.abs(turn) < STRAIGHT) {
      return onAfter;
    }
    return onBefore.plus(a.times(onAfter.minus(onBefore).cross(b) / turn));
  }
}
