package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.site.Point;

/** Reads the outer walls: each the step from its beginning to its end. */
final class WallLines {
  private static final List<String> STARTERS = List.of("full", "half");

  private final Directions directions;
  private final List<WallLine> read = new ArrayList<>();
  private double beforeDeg = Double.NaN;
  private boolean sound = true;
  private boolean drawn;

  WallLines(Directions directions) {
    this.directions = directions;
  }

  /**
   * A wall as taped.
   *
   * @param step from its beginning to its end; empty for the last one that just closes the walk
   */
  record WallLine(
      LocatedNode.Text id,
      Place place,
      Optional<Point> step,
      Optional<Measured> thick,
      Optional<LocatedNode.Text> starter,
      Optional<Measured> built) {}

  List<WallLine> read() {
    return read;
  }

  /** Whether every line so far could be read. */
  boolean sound() {
    return sound;
  }

  /** {@code wall W1 east 36' thick 8" starter full}. */
  void wall(LineScanner line) {
    boolean before = sound;
    sound = false;
    LocatedNode.Text id = line.name("a wall");
    Place place = line.here();
    Optional<Point> step = step(line);
    Clauses said = grammar("a wall").read(line);
    if (drawn) {
      throw line.refuse(
          id.place(),
          "a wall beside a drawing",
          "all outer walls are told, or all are read off a drawing",
          "remove the line, or the line \"plan\"");
    }
    read.add(
        new WallLine(
            id, place, step, said.quantity("thick"), said.word("starter"), said.quantity("built")));
    sound = before;
  }

  /** Walls that are read off a drawing. */
  void drawn(Supplier<List<WallLine>> drawing) {
    boolean before = sound;
    sound = false;
    read.addAll(drawing.get());
    sound = before;
    drawn = true;
  }

  static Grammar grammar(String kind) {
    return new Grammar(kind)
        .length("thick", Bounds.WALL_THICKNESS)
        .choice("starter", STARTERS)
        .length("built", Bounds.WALL_BUILT);
  }

  private Optional<Point> step(LineScanner line) {
    if (line.take("close")) {
      return Optional.empty();
    }
    if (line.take("by")) {
      return Optional.of(offsets(line));
    }
    beforeDeg = directions.read(line, beforeDeg);
    return Optional.of(directions.step(line, beforeDeg));
  }

  /** {@code by 12' east 3' north}: a slanting wall without its angle. */
  private Point offsets(LineScanner line) {
    Point step = new Point(0, 0);
    do {
      double lengthM = line.quantity(Bounds.DISTANCE).si();
      step = step.plus(Point.unit(directions.read(line, Double.NaN)).times(lengthM));
    } while (line.atNumber() && Directions.names(line.afterLength()));
    beforeDeg = Math.toDegrees(Math.atan2(step.y(), step.x()));
    return step;
  }
}
