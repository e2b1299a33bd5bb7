package skidway.audit.walk;

import java.util.List;
import java.util.stream.Stream;
import skidway.audit.plane.Polygon;
import skidway.erection.Placement;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Wall;

/**
 * Where somebody stands to lay a piece, and what lifting it from there up to the wall's foot counts
 * for.
 *
 * @param extraM metres of level walk
 */
record LayingPoint(Point at, double extraM) {
  /** How far off the wall's face people stand (assumption). */
  private static final double OFF_FACE_M = 0.3;

  /** One on each side of the wall. */
  static List<LayingPoint> of(Site site, Placement piece, double climbFactor) {
    Wall wall = piece.wall();
    Point off = wall.inward().times(wall.thicknessM() / 2 + OFF_FACE_M);
    double footM = heightM(site, piece.middle(), wall.thicknessM() / 2);
    return Stream.of(piece.middle().plus(off), piece.middle().minus(off))
        .map(p -> new LayingPoint(p, climbFactor * Math.max(0, footM - heightM(site, p, 0))))
        .toList();
  }

  private static double heightM(Site site, Point p, double withinM) {
    return site.decks().stream()
        .filter(deck -> Polygon.of(deck.outline()).distanceTo(p) <= withinM)
        .mapToDouble(Deck::heightM)
        .max()
        .orElse(0);
  }
}
