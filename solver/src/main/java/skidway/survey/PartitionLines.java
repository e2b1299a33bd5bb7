package skidway.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.site.Point;

/**
 * Reads walls within the house: {@code partition P1 from W1 12' to W3}, square to W1, or to a
 * distance along W3. They go from centre line to centre line.
 */
record PartitionLines(Setup setup, WallDefaults defaults, Map<String, Thing> walls) {
  private static final String EXAMPLE = "partition P1 from W1 12' to W3 thick 6\" starter full";

  void partition(LineScanner line) {
    LocatedNode.Text id = line.name("a partition");
    line.expect("from", EXAMPLE);
    SurveyedWall first = setup.house().wall(line.name("a wall"), line);
    Point start = onCentreLine(first, line.quantity(Bounds.DISTANCE).si());
    line.expect("to", EXAMPLE);
    Place to = line.here();
    SurveyedWall second = setup.house().wall(line.name("a wall"), line);
    Point end =
        line.atNumber() && !List.of("thick", "built").contains(line.afterLength())
            ? onCentreLine(second, line.quantity(Bounds.DISTANCE).si())
            : square(start, first, second, to, line);
    Clauses said = WallLines.grammar("a partition").read(line);
    Measured thick =
        said.quantity("thick")
            .or(defaults::thick)
            .orElseThrow(() -> said.missing("\"thick\"", "thick 6\""));
    Thing thing =
        new Thing(id.place())
            .put("id", id)
            .put("from", setup.nodes().point(id.place(), start))
            .put("to", setup.nodes().point(to, end))
            .put("thickness", thick.node(setup.units()))
            .put(
                "starter", Optional.of(said.neededWord("starter", "starter full, or starter half")))
            .put("built", said.quantity("built"), setup.units());
    if (walls.putIfAbsent(id.value(), thing) != null) {
      throw line.refuse(
          id.place(),
          "a second wall \"" + id.value() + '"',
          "every wall has its own name",
          "give one of them another name");
    }
  }

  private static Point onCentreLine(SurveyedWall wall, double alongM) {
    return wall.at(alongM, -wall.thicknessM() / 2);
  }

  /** Where the line square to the first wall meets the second one's centre line. */
  private static Point square(
      Point start, SurveyedWall first, SurveyedWall second, Place place, LineScanner line) {
    Point way = first.outward().times(-1);
    double turn = way.cross(second.along());
    if (Math.abs(turn) < 1e-6) {
      throw line.refuse(
          place,
          "wall \"" + second.id() + "\", which runs the same way as the partition",
          "square to \"" + first.id() + "\" the partition meets the other wall",
          "name another wall, or say the distance along it");
    }
    Point end = start.plus(way.times(second.start().minus(start).cross(second.along()) / turn));
    double alongM = end.minus(second.left()).dot(second.along());
    if (alongM < 0 || alongM > second.lengthM() || end.minus(start).dot(way) <= 0) {
      throw line.refuse(
          place,
          "wall \"" + second.id() + "\", which the partition passes by",
          "square to \"" + first.id() + "\" the partition meets the other wall",
          "name the wall that is there, or say the distance along it");
    }
    return end;
  }
}
