package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.job.SourceFile;
import skidway.job.Values;
import skidway.site.Point;
import skidway.units.Figures;

/**
 * Reads the walls off a drawing: {@code plan house.svg unit 1 mm}. They are called W1, W2 and so on
 * in the order of its corners.
 *
 * @param drawings opens a drawing by its name; empty after a problem
 */
record PlanLine(Function<String, Optional<SourceFile>> drawings) {
  /** What a wrong unit makes of a house is far beyond these (assumptions). */
  private static final double LEAST_LONGEST_M = 1;

  private static final double MOST_LONGEST_M = 150;
  private static final String UNIT = "unit 1 mm, what one unit of the drawing is on the ground";

  List<WallLines.WallLine> read(LineScanner line) {
    LocatedNode.Text name = line.name("a drawing");
    Clauses said =
        new Grammar("a drawing").length("unit", Bounds.DISTANCE).name("shape").read(line);
    double unitM = said.needed("unit", UNIT).si();
    String shape = said.word("shape").map(LocatedNode.Text::value).orElse("");
    List<Point> corners =
        drawings
            .apply(name.value())
            .flatMap(f -> new PlanDrawing(f, line.values().problems()).corners(shape))
            .orElseThrow(Misread::new);
    requireSize(line.values(), name.place(), longest(corners) * unitM);
    return walls(name.place(), corners, unitM);
  }

  private static double longest(List<Point> corners) {
    double longest = 0;
    for (int i = 0; i < corners.size(); i++) {
      longest = Math.max(longest, corners.get(i).distanceTo(corners.get((i + 1) % corners.size())));
    }
    return longest;
  }

  private static void requireSize(Values values, Place place, double longestM) {
    if (longestM < LEAST_LONGEST_M || longestM > MOST_LONGEST_M) {
      Figures figures = values.figures();
      values
          .problems()
          .add(
              place,
              "a house whose longest wall is " + figures.length(longestM),
              "the longest wall of a house is "
                  + figures.length(LEAST_LONGEST_M)
                  + " to "
                  + figures.length(MOST_LONGEST_M),
              "correct its unit: " + UNIT);
      throw new Misread();
    }
  }

  private static List<WallLines.WallLine> walls(Place place, List<Point> corners, double unitM) {
    List<WallLines.WallLine> walls = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point step = corners.get((i + 1) % corners.size()).minus(corners.get(i)).times(unitM);
      walls.add(
          new WallLines.WallLine(
              Nodes.text(place, "W" + (i + 1)),
              place,
              Optional.of(step),
              Optional.empty(),
              Optional.empty(),
              Optional.empty()));
    }
    return walls;
  }
}
