package skidway.audit.walk;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.audit.plane.Polygon;
import skidway.erection.Placement;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Site;

/**
 * Tells where somebody stands to lay a piece, and what lifting it from there up to the wall's foot
 * counts for.
 *
 * <p>On either side of the wall, at the middle of the piece's place, the person stands at the first
 * walkable point on the line from 0.3 m off the wall's face towards the face, looked for every 0.05
 * m down to 0.05 m off the face (assumption). A side without one does not count. Planned walks
 * start from the same sentence, with none of this code.
 *
 * @param extraM metres of level walk
 */
record LayingPoint(Point at, double extraM) {
  private static final int STEPS_OFF_FACE = 6;
  private static final double STEP_M = 0.05;

  /** At most one on each side of the wall. */
  static List<LayingPoint> of(Site site, Ground ground, Placement piece, double climbFactor) {
    double footM = heightM(site, piece.middle(), piece.wall().thicknessM() / 2);
    return Stream.of(piece.wall().inward(), piece.wall().inward().times(-1))
        .flatMap(side -> firstWalkable(ground, piece, side).stream())
        .map(p -> new LayingPoint(p, climbFactor * Math.max(0, footM - heightM(site, p, 0))))
        .toList();
  }

  private static Optional<Point> firstWalkable(Ground ground, Placement piece, Point side) {
    double faceM = piece.wall().thicknessM() / 2;
    return IntStream.range(0, STEPS_OFF_FACE)
        .mapToObj(i -> side.times(faceM + (STEPS_OFF_FACE - i) * STEP_M))
        .map(piece.middle()::plus)
        .filter(ground::holds)
        .findFirst();
  }

  private static double heightM(Site site, Point p, double withinM) {
    return site.decks().stream()
        .filter(deck -> Polygon.of(deck.outline()).distanceTo(p) <= withinM)
        .mapToDouble(Deck::heightM)
        .max()
        .orElse(0);
  }
}
