package skidway.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import skidway.erection.PullOrder;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.timber.Piece;

class WalkingDistancesTest {
  private static final double TOLERANCE_M = 0.0005;
  private static final Walker WALKER = new Walker(0.45, 4.4);

  /** The middle of a 10 m piece of the south wall, 0.1 m thick on each side, is at (15, 16). */
  private static final List<Piece> SOUTH =
      aBundle("B")
          .piece("W1", 1, 1, 10)
          .piece("W1", 2, 1, 10)
          .piece("W1", 3, 1, 10)
          .piece("W1", 4, 1, 10)
          .piece("W1", 5, 1, 10)
          .build()
          .pieces();

  @Test
  void fromTheGroundToTheOutsideFaceCountsTheDeckAsClimb() {
    double metres = between(aSite().build(), new Point(15, 10), SOUTH)[0];
    assertThat(metres).isCloseTo(16 - 0.4 - 10 + 0.6 * 4.4, within(TOLERANCE_M));
  }

  @Test
  void fromTheDeckToTheInsideFaceCountsNoClimb() {
    double metres = between(aSite().build(), new Point(15, 20), SOUTH)[0];
    assertThat(metres).isCloseTo(20 - 16.4, within(TOLERANCE_M));
  }

  @Test
  void fromTheGroundToTheFartherFaceWhenTheNearerIsClosedOff() {
    // Something stands before the outside face right up to it: people go up the steps instead.
    double metres = between(blockedBeforeTheWall(15.9), new Point(14.5, 10), SOUTH)[0];
    double upTheSteps = 5 + 1.3 + 0.6 * 4.4 + Math.hypot(0.5, 0.1);
    assertThat(metres).isCloseTo(upTheSteps, within(TOLERANCE_M));
  }

  @Test
  void nearerToTheFaceWhereSomethingStandsFartherOff() {
    // The points 0.3 and 0.25 m off the face are taken, the one at 0.2 m is free.
    double metres = between(blockedBeforeTheWall(15.7), new Point(14.5, 10), SOUTH)[0];
    double roundTheCorner = Math.hypot(0.4, 5.7) + 0.1;
    assertThat(metres).isCloseTo(roundTheCorner + 0.6 * 4.4, within(TOLERANCE_M));
  }

  private static Site blockedBeforeTheWall(double toY) {
    return aSite()
        .walls(wall("W1", 10, 16, 20, 16, Starter.FULL))
        .keepClear("K", Outline.box(14.9, 15.5, 15.1, toY), 0, false)
        .build();
  }

  @Test
  void aWallIsWalkedRoundOnceItStandsHigherThanAStep() {
    // Three courses of 0.15 m reach 0.45 m, which is stepped over; the north
    // wall's piece is pulled when the south wall stands higher. The door of W1 runs from 14 to 15.
    Site site = aSite().deckHeight(0).build();
    Point from = new Point(12, 14);
    List<Piece> north = aBundle("B").piece("W3", 6, 1, 10).build().pieces();
    List<Piece> pieces = new ArrayList<>(SOUTH);
    pieces.addAll(north);
    double[] metres = between(site, from, pieces);
    Point inside = new Point(15, 23.6);
    assertThat(between(site, from, north)[0])
        .isCloseTo(from.distanceTo(inside), within(TOLERANCE_M));
    // The way bends at the door's outer corner only.
    Point jamb = new Point(14, 15.9);
    double throughTheDoor = from.distanceTo(jamb) + jamb.distanceTo(inside);
    assertThat(metres[5]).isCloseTo(throughTheDoor, within(TOLERANCE_M));
  }

  @Test
  void theBulkAnswerIsThatOfEveryMapAlone() {
    Site site = aSite().build();
    List<Piece> pieces =
        aBundle("B")
            .piece("W1", 1, 1, 4)
            .piece("W1", 5, 1, 4)
            .piece("W2", 1, 1, 8)
            .piece("W2", 6, 1, 8)
            .piece("W3", 4, 1, 10)
            .piece("W3", 7, 1, 10)
            .piece("W4", 5, 1, 8)
            .build()
            .pieces();
    PullOrder order = PullOrder.of(site, pieces);
    List<Point> accesses = List.of(new Point(3, 3), new Point(15, 20), new Point(35, 26));
    double[][] metres = WalkingDistances.between(site, WALKER, accesses, order);
    for (int pull = 0; pull < pieces.size(); pull++) {
      Set<String> risen =
          order.placements().subList(0, pull).stream()
              .filter(laid -> laid.topM() > WALKER.stepOverM())
              .map(laid -> laid.wall().id())
              .collect(Collectors.toSet());
      double[][] alone =
          WalkingMap.of(site, risen, WALKER)
              .metres(accesses, List.of(order.placements().get(pull)));
      for (int from = 0; from < accesses.size(); from++) {
        assertThat(metres[from][pull]).isEqualTo(alone[from][0]).isFinite();
      }
    }
  }

  private static double[] between(Site site, Point access, List<Piece> pieces) {
    return WalkingDistances.between(site, WALKER, List.of(access), PullOrder.of(site, pieces))[0];
  }
}
