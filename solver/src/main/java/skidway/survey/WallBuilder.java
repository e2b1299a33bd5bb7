package skidway.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.job.Place;
import skidway.job.Problems;
import skidway.site.Point;
import skidway.units.UnitSystem;

/**
 * Makes walls of taped lengths: puts them counter-clockwise, and finds their centre lines between
 * the faces that were taped.
 */
final class WallBuilder {
  private final WallDefaults defaults;
  private final Problems problems;
  private final UnitSystem units;
  private final List<String> notes;
  private final Map<String, Thing> things = new LinkedHashMap<>();

  WallBuilder(WallDefaults defaults, Problems problems, UnitSystem units, List<String> notes) {
    this.defaults = defaults;
    this.problems = problems;
    this.units = units;
    this.notes = notes;
  }

  /** The walls as they go into the file, by id, without their doors and windows. */
  Map<String, Thing> things() {
    return things;
  }

  House build(List<WallLines.WallLine> read, Closing closing) {
    Optional<Closing.Closed> closed = closing.close(read);
    int before = problems.count();
    List<Measured> thick = thicknesses(read);
    if (closed.isEmpty() || problems.count() > before) {
      return House.unread();
    }
    notes.add(closed.get().note());
    List<WallLines.WallLine> walls = new ArrayList<>(read);
    List<Point> corners = new ArrayList<>(closed.get().corners());
    if (new Ring(corners).twiceAreaM2() < 0) {
      turnRound(walls, corners, thick);
    }
    List<SurveyedWall> surveyed = faces(walls, new Ring(corners), thick);
    for (int i = 0; i < walls.size(); i++) {
      if (things.put(
              walls.get(i).id().value(), thing(walls.get(i), surveyed.get(i), thick.get(i), i))
          != null) {
        problems.add(
            walls.get(i).id().place(),
            "a second wall \"" + walls.get(i).id().value() + '"',
            "every wall has its own name",
            "give one of them another name");
      }
    }
    return problems.count() > before ? House.unread() : House.of(surveyed);
  }

  private List<Measured> thicknesses(List<WallLines.WallLine> walls) {
    List<Measured> thick = new ArrayList<>();
    for (WallLines.WallLine wall : walls) {
      wall.thick().or(defaults::thick).ifPresentOrElse(thick::add, () -> noThickness(wall.place()));
    }
    return thick;
  }

  private void noThickness(Place place) {
    problems.add(
        place,
        "a wall whose thickness nobody said",
        "it is said of one wall, or of all of them in a line of its own",
        "add the line: walls thick 8\"");
  }

  /** The first wall stays first; each is walked the other way, and so is the house. */
  private void turnRound(
      List<WallLines.WallLine> walls, List<Point> corners, List<Measured> thick) {
    Collections.reverse(walls);
    Collections.rotate(walls, 1);
    Collections.reverse(thick);
    Collections.rotate(thick, 1);
    Collections.reverse(corners);
    Collections.rotate(corners, 2);
    notes.add(
        "The walls were listed clockwise and are turned round, so that each goes from its left end"
            + " to its right, seen from outside.");
  }

  private List<SurveyedWall> faces(
      List<WallLines.WallLine> walls, Ring taped, List<Measured> thick) {
    List<Double> toCentre =
        thick.stream().map(t -> defaults.tapedOutside() ? t.si() / 2 : 0).toList();
    List<Double> toOutside =
        thick.stream().map(t -> defaults.tapedOutside() ? 0 : -t.si() / 2).toList();
    Ring centre = taped.inside(toCentre);
    Ring outside = taped.inside(toOutside);
    List<SurveyedWall> all = new ArrayList<>();
    for (int i = 0; i < walls.size(); i++) {
      all.add(
          new SurveyedWall(
              walls.get(i).id().value(),
              thick.get(i).si(),
              outside.corner(i),
              outside.corner(i + 1),
              centre.corner(i),
              centre.corner(i + 1)));
    }
    return all;
  }

  private Thing thing(WallLines.WallLine wall, SurveyedWall surveyed, Measured thick, int turn) {
    Nodes nodes = new Nodes(units);
    String usual = turn % 2 == 0 ? "full" : "half";
    return new Thing(wall.id().place())
        .put("id", wall.id())
        .put("from", nodes.point(wall.place(), surveyed.start()))
        .put("to", nodes.point(wall.place(), surveyed.end()))
        .put("thickness", thick.node(units))
        .put("starter", wall.starter().orElseGet(() -> Nodes.text(wall.place(), usual)))
        .put("built", wall.built(), units);
  }
}
