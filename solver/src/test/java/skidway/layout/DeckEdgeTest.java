package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.layout.Placing.SETTINGS;
import static skidway.layout.Placing.checkBroken;
import static skidway.layout.Placing.checkLegal;
import static skidway.layout.Placing.deckSpot;
import static skidway.layout.Placing.yardSpot;
import static skidway.testkit.SiteBuilder.aSite;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.rules.Rule;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.testkit.SiteBuilder;

/** A setback of 1.2 m, bare or along walls that stand. */
class DeckEdgeTest {
  @Test
  void deckEdge() {
    SiteBuilder site = aSite().walls();
    checkLegal(site, deckSpot(9.9 + 1.2 + 2, 20));
    checkBroken(site, deckSpot(9.9 + 1.1 + 2, 20), Rule.DECK_EDGE, 1.1, 1.2);
    checkLegal(site, yardSpot(15, 15.9 - 6));
  }

  /** The south wall's working strip ends 1.11 m from the deck's edge at y = 15.9. */
  @Test
  void deckEdgeWhereAWallStands() {
    Spot southOf = deckSpot(15, 15.9 + 1.15 + 0.3);
    checkBroken(aSite(), southOf, Rule.DECK_EDGE, 1.15, 1.2);
    assertThat(capM(aSite(), southOf)).isZero();
    checkLegal(aSite().builtWalls(0.9), southOf);
    assertThat(capM(aSite().builtWalls(0.9), southOf)).isEqualTo(0.9);
    assertThat(capM(aSite().builtWalls(0.9), deckSpot(15, 20))).isInfinite();
    assertThat(capM(aSite().builtWalls(0.9), yardSpot(15, 9))).isInfinite();
  }

  @Test
  void theLowestOfTheWallsBesideAStackCapsItAndTheHighestOnAStretchCounts() {
    // 1.15 m from both edges at the south-west corner; walls as long as the edges.
    Spot corner = deckSpot(9.9 + 1.15 + 2, 15.9 + 1.15 + 0.3);
    Wall south = built("W1", 9.9, 16, 20.1, 16, 0.9);
    Wall west = built("W4", 10, 24.1, 10, 15.9, 0.6);
    assertThat(capM(aSite().walls(south, west), corner)).isEqualTo(0.6);
    assertThat(capM(aSite().walls(south, west, built("W5", 10.2, 24.1, 10.2, 15.9, 2)), corner))
        .isEqualTo(0.9);
  }

  @Test
  void aWallCoversOnlyTheEdgeItRunsAlong() {
    Spot southOf = deckSpot(15, 15.9 + 1.15 + 0.3);
    // The stack reaches from x = 13 to 17; nearer than 1.2 m is the edge from 12.66 to 17.34;
    // a wall of 0.2 m covers as much beyond its end.
    checkBroken(
        aSite().walls(built("W1", 10, 16, 17.1, 16, 2)),
        southOf,
        Rule.DECK_EDGE,
        Math.hypot(0.3, 1.15),
        1.2);
    checkLegal(aSite().walls(built("W1", 10, 16, 17.2, 16, 2)), southOf);
    // As far off the edge as may be, outside it; then farther.
    checkLegal(aSite().walls(built("W1", 10, 15.3, 20, 15.3, 2)), southOf);
    checkBroken(
        aSite().walls(built("W1", 10, 15.29, 20, 15.29, 2)), southOf, Rule.DECK_EDGE, 1.15, 1.2);
    // Turned by 4.9 and by 5.1 degrees.
    checkLegal(aSite().walls(turned(4.9)), southOf);
    checkBroken(aSite().walls(turned(5.1)), southOf, Rule.DECK_EDGE, 1.15, 1.2);
  }

  private static Wall built(String id, double x0, double y0, double x1, double y1, double builtM) {
    return new Wall(id, new Point(x0, y0), new Point(x1, y1), 0.2, Starter.FULL, List.of(), builtM);
  }

  /** A wall of 6 m that runs past the middle of the deck's south edge. */
  private static Wall turned(double degrees) {
    Point half = Point.unit(degrees).times(3);
    return new Wall(
        "W1",
        new Point(15, 15.7).minus(half),
        new Point(15, 15.7).plus(half),
        0.2,
        Starter.FULL,
        List.of(),
        2);
  }

  private static double capM(SiteBuilder site, Spot spot) {
    return LegalSpots.of(site.build(), SETTINGS).heightCapM(spot);
  }
}
