package skidway.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import skidway.erection.Placement;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Wall;

/**
 * Finds where somebody stands to lay a piece.
 *
 * <p>On either side of the wall, at the middle of the piece's place, the person stands at the first
 * walkable point on the line from 0.3 m off the wall's face towards the face, looked for every 0.05
 * m down to 0.05 m off the face (assumption). A side without one does not count. The audit starts
 * from the same sentence, with none of this code.
 *
 * @param extraM metres of walk that lifting the piece up onto the deck counts for, when the wall
 *     stands on a deck and the point does not
 */
record StandingPoint(Point at, double extraM) {
  private static final double[] OFF_FACE_M = {0.30, 0.25, 0.20, 0.15, 0.10, 0.05};

  /** The inside one first; none on a side where nobody can stand. */
  static List<StandingPoint> of(
      Site site, Placement place, Walker walker, Predicate<Point> walkable) {
    Wall wall = place.wall();
    double halfM = wall.thicknessM() / 2;
    double wallFootM = heightM(site, place.middle(), halfM);
    List<StandingPoint> found = new ArrayList<>();
    for (Point out : List.of(wall.inward(), wall.inward().times(-1))) {
      for (double offFaceM : OFF_FACE_M) {
        Point point = place.middle().plus(out.times(halfM + offFaceM));
        if (walkable.test(point)) {
          double climbM = Math.max(0, wallFootM - heightM(site, point, 0));
          found.add(new StandingPoint(point, walker.climbFactor() * climbM));
          break;
        }
      }
    }
    return found;
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
