package skidway.geometry;

import java.util.List;
import skidway.erection.Placement;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Wall;

/**
 * Where somebody stands to lay a piece: 0.3 m (assumption) off either face of the wall, at the
 * middle of the piece's place.
 *
 * @param extraM metres of walk that lifting the piece up onto the deck counts for, when the wall
 *     stands on a deck and the point does not
 */
record StandingPoint(Point at, double extraM) {
  private static final double OFF_FACE_M = 0.3;

  /** The inside one first. */
  static List<StandingPoint> of(Site site, Placement place, Walker walker) {
    Wall wall = place.wall();
    Point off = wall.inward().times(wall.thicknessM() / 2 + OFF_FACE_M);
    double wallFoot = heightM(site, place.middle(), wall.thicknessM() / 2);
    return List.of(
        at(site, place.middle().plus(off), wallFoot, walker),
        at(site, place.middle().minus(off), wallFoot, walker));
  }

  private static StandingPoint at(Site site, Point point, double wallFootM, Walker walker) {
    double climbM = Math.max(0, wallFootM - heightM(site, point, 0));
    return new StandingPoint(point, walker.climbFactor() * climbM);
  }

  /** Height of the highest deck under a point or within a distance of it, 0 on the ground. */
  private static double heightM(Site site, Point point, double withinM) {
    return site.decks().stream()
        .filter(deck -> isNear(deck, point, withinM))
        .mapToDouble(Deck::heightM)
        .max()
        .orElse(0);
  }

  private static boolean isNear(Deck deck, Point point, double withinM) {
    return Shapes.polygon(deck.outline())
        .isWithinDistance(Shapes.point(point), withinM + Rectangle.TOUCH_M);
  }
}
