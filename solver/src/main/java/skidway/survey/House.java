package skidway.survey;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.job.LocatedNode;
import skidway.job.Quote;
import skidway.site.Point;
import skidway.units.Nearest;

/**
 * The outer walls by their names. A house that could not be read stands for any wall, so that one
 * mistake in it is not told again wherever something is taped from it.
 */
final class House {
  private static final SurveyedWall STAND_IN =
      new SurveyedWall(
          "", 0.2, new Point(0, 0), new Point(10, 0), new Point(0.1, 0.1), new Point(9.9, 0.1));

  private final Map<String, SurveyedWall> walls = new LinkedHashMap<>();
  private final Optional<Ring> outside;

  private House(List<SurveyedWall> all, Optional<Ring> outside) {
    all.forEach(w -> walls.put(w.id(), w));
    this.outside = outside;
  }

  static House of(List<SurveyedWall> walls) {
    return new House(walls, Optional.of(new Ring(walls.stream().map(SurveyedWall::left).toList())));
  }

  static House unread() {
    return new House(List.of(), Optional.empty());
  }

  /** The outside faces' corners, counter-clockwise; empty when the house could not be read. */
  Optional<Ring> outside() {
    return outside;
  }

  SurveyedWall wall(LocatedNode.Text name, LineScanner line) {
    SurveyedWall wall = walls.get(name.value());
    if (wall != null) {
      return wall;
    }
    if (outside.isEmpty()) {
      return STAND_IN;
    }
    throw line.refuse(
        name.place(),
        "unknown wall " + Quote.found(name.value()) + Nearest.hint(name.value(), walls.keySet()),
        "an outer wall is one of " + String.join(", ", walls.keySet()),
        "name one of them");
  }
}
