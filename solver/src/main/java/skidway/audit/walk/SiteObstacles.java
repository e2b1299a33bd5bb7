package skidway.audit.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import skidway.audit.plane.Polygon;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Site;
import skidway.site.Wall;
import skidway.site.WallOpening;

/**
 * Draws what the site itself puts in people's way: its boundary (taken as a fence), floor openings,
 * keep-clears that are not walkable, the edges of decks too high to step onto, and walls, with gaps
 * at doors.
 *
 * @param stepOverM decks no higher than this are stepped onto anywhere
 */
record SiteObstacles(Site site, double stepOverM) {
  /** The mark of a cell closed by the site. */
  static final byte CLOSED = 1;

  /**
   * Draws them on a grid.
   *
   * @param grownM how far a person's middle keeps off
   * @param leastM how thick lines and walls are drawn at least, so that no move slips through
   */
  byte[] draw(WalkGrid grid, double grownM, double leastM, Predicate<Wall> risen) {
    double offLineM = Math.max(grownM, leastM / 2);
    byte[] marks = grid.allMarked(CLOSED);
    Polygon boundary = Polygon.of(site.boundary());
    grid.clearInside(marks, CLOSED, boundary);
    grid.markNear(marks, CLOSED, boundary, offLineM);
    for (Deck deck : site.decks()) {
      if (deck.heightM() > stepOverM) {
        grid.markNear(marks, CLOSED, Polygon.of(deck.outline()), offLineM);
      }
      for (FloorOpening opening : deck.openings()) {
        close(grid, marks, Polygon.of(opening.outline()), offLineM);
      }
    }
    for (KeepClear keepClear : site.keepClears()) {
      if (!keepClear.walkable()) {
        close(grid, marks, Polygon.of(keepClear.outline()), offLineM);
      }
    }
    for (Wall wall : site.walls()) {
      if (risen.test(wall)) {
        double offWallM = Math.max(grownM, (leastM - wall.thicknessM()) / 2);
        closedParts(wall).forEach(part -> grid.markNear(marks, CLOSED, part, offWallM));
      }
    }
    return marks;
  }

  private static void close(WalkGrid grid, byte[] marks, Polygon polygon, double grownM) {
    grid.markInside(marks, CLOSED, polygon);
    grid.markNear(marks, CLOSED, polygon, grownM);
  }

  /** The parts of a wall between its doors. */
  static List<Footprint> closedParts(Wall wall) {
    List<Footprint> parts = new ArrayList<>();
    List<WallOpening> doors =
        wall.openings().stream()
            .filter(WallOpening::door)
            .sorted(Comparator.comparingDouble(WallOpening::fromM))
            .toList();
    double from = 0;
    for (WallOpening door : doors) {
      addPart(parts, wall, from, door.fromM());
      from = Math.max(from, door.toM());
    }
    addPart(parts, wall, from, wall.lengthM());
    return parts;
  }

  private static void addPart(List<Footprint> parts, Wall wall, double from, double to) {
    if (to > from) {
      parts.add(
          new Footprint(
              wall.at((from + to) / 2),
              wall.footprint().headingDeg(),
              to - from,
              wall.thicknessM()));
    }
  }
}
