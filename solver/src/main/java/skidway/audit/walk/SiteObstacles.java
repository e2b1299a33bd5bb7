package skidway.audit.walk;

import skidway.audit.plane.Polygon;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Site;

/**
 * Draws what the site itself puts in people's way: its boundary (taken as a fence), floor openings,
 * keep-clears that are not walkable, the edges of decks too high to step onto, and risen walls.
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
  byte[] draw(WalkGrid grid, double grownM, double leastM, ClosedWalls walls) {
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
    for (Footprint part : walls.parts()) {
      double offWallM = Math.max(grownM, (leastM - part.widthM()) / 2);
      grid.markNear(marks, CLOSED, part, offWallM);
    }
    return marks;
  }

  private static void close(WalkGrid grid, byte[] marks, Polygon polygon, double grownM) {
    grid.markInside(marks, CLOSED, polygon);
    grid.markNear(marks, CLOSED, polygon, grownM);
  }
}
