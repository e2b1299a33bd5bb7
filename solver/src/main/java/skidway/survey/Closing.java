package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.job.Place;
import skidway.job.Problems;
import skidway.site.Point;
import skidway.units.Figures;

/**
 * Closes the walls: judges how far the last one ends from the first one's beginning, and spreads
 * that over all of them by the compass rule.
 *
 * @param least the {@code n} of the worst {@code 1:n} that is taken
 */
record Closing(double least, Figures figures, Problems problems) {
  /**
   * Assumption. Land is surveyed to 1:3000 (Wisconsin, property surveys) or 1:5000 (WAC
   * 332-130-090); a house taped to the half inch cannot reach that, and 1:500 still finds a length
   * that is read wrong by a few inches.
   */
  static final double USUAL_LEAST = 500;

  /** Less than the thickness of a pencil line is no misclosure. */
  private static final double EXACT_M = 0.0005;

  /**
   * Closed walls.
   *
   * @param corners where each begins
   * @param note how well they closed
   */
  record Closed(List<Point> corners, String note) {}

  /** The corners; empty after a problem, which stands at the last wall. */
  Optional<Closed> close(List<WallLines.WallLine> walls) {
    List<Point> legs = new ArrayList<>();
    for (int i = 0; i < walls.size(); i++) {
      WallLines.WallLine wall = walls.get(i);
      boolean last = i == walls.size() - 1;
      if (wall.step().isEmpty() && !last) {
        problems.add(
            wall.place(),
            "\"close\" before the last wall",
            "only the last wall may close the walk without being taped",
            "tape this wall, or put it last");
        return Optional.empty();
      }
      Traverse soFar = new Traverse(legs);
      legs.add(wall.step().orElseGet(() -> soFar.misclosure().times(-1)));
    }
    return closed(new Traverse(legs), walls);
  }

  private Optional<Closed> closed(Traverse walk, List<WallLines.WallLine> walls) {
    WallLines.WallLine last = walls.get(walls.size() - 1);
    if (walls.size() < 3 || walk.legs().stream().anyMatch(leg -> leg.length() < EXACT_M)) {
      problems.add(
          last.place(),
          walls.size() < 3 ? walls.size() + " outer walls" : "a wall without a length",
          "three walls or more, each with a length, go round a house",
          "add the walls that are missing, in the order of a walk round the house");
      return Optional.empty();
    }
    double overM = walk.misclosure().length();
    if (overM < EXACT_M) {
      boolean taped = last.step().isPresent();
      String note =
          taped
              ? "The walls close exactly."
              : "The last wall was not taped: nothing checks the others.";
      return Optional.of(new Closed(walk.points(new Point(0, 0)), note));
    }
    if (walk.ratio() < least) {
      refuse(walk, last.place());
      return Optional.empty();
    }
    String note =
        String.format(
            Locale.ROOT,
            "The walls end %s from where they began, 1:%.0f of %s; every wall takes its share"
                + " (compass rule).",
            fine(overM),
            walk.ratio(),
            figures.length(walk.lengthM()));
    return Optional.of(new Closed(walk.closed().points(new Point(0, 0)), note));
  }

  private void refuse(Traverse walk, Place place) {
    double overM = walk.misclosure().length();
    problems.add(
        place,
        String.format(
            Locale.ROOT,
            "walls that end %s from where they began, 1:%.0f of %s",
            fine(overM),
            walk.ratio(),
            figures.length(walk.lengthM())),
        String.format(Locale.ROOT, "walls close to 1:%.0f or better", least),
        "tape again, first the walls along the gap; write \"close\" instead of the last wall's"
            + " direction and length if it was not taped; or say what is enough, as in closing 1:200");
  }

  /** A gap below the step in which lengths are written must not read as none. */
  private String fine(double metres) {
    return metres < 0.01
        ? String.format(Locale.ROOT, "%.0f mm", metres * 1000)
        : figures.length(metres);
  }
}
