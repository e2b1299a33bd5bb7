package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import skidway.job.Bounds;
import skidway.site.Point;

/** Reads points and lines that are walked: {@code from 10' off W1 middle to 30' off W1 middle}. */
record Walked(LineScanner line, Setup setup) {
  private static final String EXAMPLE = "10' off W1 6' from left";

  /** A point beside a wall. */
  Point point() {
    Measured off = line.quantity(Bounds.DISTANCE);
    int side = line.oneOf("a side of a wall", List.of("off", "inside"));
    SurveyedWall wall = setup.house().wall(line.name("a wall"), line);
    double outM = side == 0 ? off.si() : -wall.thicknessM() - off.si();
    if (line.take("middle")) {
      return wall.at(wall.lengthM() / 2, outM);
    }
    Measured along = line.quantity(Bounds.DISTANCE);
    line.expect("from", EXAMPLE);
    int end = line.oneOf("an end of a wall, seen from outside,", List.of("left", "right"));
    return wall.at(end == 0 ? along.si() : wall.lengthM() - along.si(), outM);
  }

  /** The points of {@code from A to B to C}, of which {@code from} is gone past. */
  List<Point> points() {
    List<Point> points = new ArrayList<>(List.of(point()));
    line.expect("to", "from " + EXAMPLE + " to 30' off W1 6' from left");
    do {
      points.add(point());
    } while (line.take("to"));
    return points;
  }

  /** The corners of {@code outline from A east 20' north 10' west 20'}. */
  List<Point> outline() {
    line.expect("from", "outline from " + EXAMPLE + " east 20' north 10' west 20'");
    List<Point> corners = new ArrayList<>(List.of(point()));
    double before = Double.NaN;
    while (Directions.begins(line)) {
      before = setup.directions().read(line, before);
      corners.add(corners.get(corners.size() - 1).plus(setup.directions().step(line, before)));
    }
    Point first = corners.get(0);
    if (corners.get(corners.size() - 1).distanceTo(first) < 0.001) {
      corners.remove(corners.size() - 1); // walked back to the start
    }
    return corners;
  }
}
