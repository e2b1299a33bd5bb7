package skidway.job;

import java.util.List;
import skidway.site.Wall;
import skidway.site.WallOpening;

/** Checks that a wall has a length and that its openings lie in it and apart from each other. */
record WallChecks(Fields at, Wall wall) {
  /** Touching is allowed, and rounding is no mistake. */
  private static final double TOLERANCE_M = 0.001;

  /** A wall shorter than this holds no timber. */
  private static final double SHORTEST_WALL_M = 0.1;

  void openingsFit(List<Read<WallOpening>> openings) {
    if (wall.lengthM() < SHORTEST_WALL_M) {
      at.report(
          at.at("to"),
          "wall \"" + wall.id() + "\" ending where it starts",
          "a wall is at least " + at.length(SHORTEST_WALL_M) + " long",
          "correct \"from\" or \"to\"");
      return;
    }
    for (int i = 0; i < openings.size(); i++) {
      Read<WallOpening> opening = openings.get(i);
      inWall(opening);
      for (Read<WallOpening> other : openings.subList(0, i)) {
        apart(opening, other.value());
      }
    }
  }

  private void inWall(Read<WallOpening> opening) {
    WallOpening o = opening.value();
    if (o.toM() > wall.lengthM() + TOLERANCE_M) {
      at.report(
          opening.at().at("width"),
          "opening \"" + o.id() + "\" ending " + at.length(o.toM()) + " from the wall's start",
          "wall \"" + wall.id() + "\" is " + at.length(wall.lengthM()) + " long",
          "correct \"from\" or \"width\"; \"from\" counts from the wall's left end seen from outside");
    }
    if (o.headM() <= o.sillM()) {
      at.report(
          opening.at().at("head"),
          "opening \"" + o.id() + "\" with its head at " + at.length(o.headM()),
          "the head is above the sill, here " + at.length(o.sillM()),
          "correct \"sill\" or \"head\"; both count from the wall's foot");
    }
  }

  private void apart(Read<WallOpening> opening, WallOpening other) {
    WallOpening o = opening.value();
    boolean across =
        Math.min(o.toM(), other.toM()) - Math.max(o.fromM(), other.fromM()) > TOLERANCE_M;
    boolean upright =
        Math.min(o.headM(), other.headM()) - Math.max(o.sillM(), other.sillM()) > TOLERANCE_M;
    if (across && upright) {
      at.report(
          opening.at().at("from"),
          "opening \"" + o.id() + "\" over opening \"" + other.id() + '"',
          "openings of a wall lie apart",
          "correct the \"from\" or \"width\" of one of them");
    }
  }
}
