package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.job.SourceFile;
import skidway.site.Point;

/**
 * Reads the walls off a drawing: {@code plan house.svg unit 1 mm}. They are called W1, W2 and so on
 * in the order of its corners.
 *
 * @param drawings opens a drawing by its name; empty after a problem
 */
record PlanLine(Function<String, Optional<SourceFile>> drawings) {
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
    return walls(name.place(), corners, unitM);
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
