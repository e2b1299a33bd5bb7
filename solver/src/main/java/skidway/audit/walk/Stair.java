package skidway.audit.walk;

import java.util.List;
import skidway.site.Point;
import skidway.site.Site;

/**
 * Steps as walking sees them.
 *
 * @param walkM metres of level walk that they count for, up or down
 */
record Stair(Point foot, Point top, double walkM) {

  static List<Stair> all(Site site, double climbFactor) {
    return site.decks().stream()
        .flatMap(
            deck ->
                deck.steps().stream()
                    .map(
                        s ->
                            new Stair(
                                s.foot(),
                                s.top(),
                                s.foot().distanceTo(s.top()) + climbFactor * deck.heightM())))
        .toList();
  }
}
