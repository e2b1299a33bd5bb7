package skidway.survey;

import java.util.List;
import skidway.job.LocatedNode;
import skidway.site.Point;

/** Turns distances from a wall into places. */
record Taped(Clauses said, LineScanner line, House house) {
  private static final String WALL_EXAMPLE = "12' off W3";
  private static final String ALONG_EXAMPLE = "6' from left, middle, or full length";

  /**
   * A rectangle beside a wall.
   *
   * @param leftM from the wall's left end to the rectangle's nearest side, along the wall
   * @param nearM from the outside face out to its near side; inwards when negative
   * @param deepM square to the wall, away from it; inwards when negative
   */
  record Strip(SurveyedWall wall, double leftM, double nearM, double longM, double deepM) {
    List<Point> corners() {
      Point a = wall.at(leftM, nearM);
      Point b = wall.at(leftM + longM, nearM);
      Point c = wall.at(leftM + longM, nearM + deepM);
      Point d = wall.at(leftM, nearM + deepM);
      return deepM > 0 ? List.of(d, c, b, a) : List.of(a, b, c, d);
    }

    Point centre() {
      return wall.at(leftM + longM / 2, nearM + deepM / 2);
    }
  }

  SurveyedWall wall() {
    return house.wall(face(), line);
  }

  /** The point that is told from a wall. */
  Point point() {
    SurveyedWall wall = wall();
    return wall.at(leftM(wall, 0), outM(wall));
  }

  Strip strip() {
    SurveyedWall wall = wall();
    double deepM = said.needed("wide", "wide 10'").si();
    boolean full = said.has("full");
    double longM = full ? wall.lengthM() : said.needed("long", "long 20', or full length").si();
    return new Strip(
        wall, leftM(wall, longM), outM(wall), longM, said.has("inside") ? -deepM : deepM);
  }

  /** How far from the wall's left end a thing of a length begins. */
  double leftM(SurveyedWall wall, double longM) {
    int ways =
        (said.has("full") ? 1 : 0) + (said.has("from") ? 1 : 0) + (said.has("middle") ? 1 : 0);
    if (ways != 1) {
      throw said.missing(ways == 0 ? "its place along the wall" : "one place alone", ALONG_EXAMPLE);
    }
    if (said.has("full")) {
      return 0;
    }
    if (said.has("middle")) {
      return (wall.lengthM() - longM) / 2;
    }
    double fromM = said.needed("from", ALONG_EXAMPLE).si();
    boolean left = said.neededWord("from", ALONG_EXAMPLE).value().equals("left");
    return left ? fromM : wall.lengthM() - fromM - longM;
  }

  private LocatedNode.Text face() {
    if (said.has("off") && said.has("inside")) {
      throw said.missing("one wall alone", WALL_EXAMPLE);
    }
    return said.word("off")
        .or(() -> said.word("inside"))
        .orElseThrow(() -> said.missing("its wall", WALL_EXAMPLE));
  }

  double outM(SurveyedWall wall) {
    return said.quantity("off")
        .map(Measured::si)
        .orElseGet(() -> -wall.thicknessM() - said.needed("inside", WALL_EXAMPLE).si());
  }
}
