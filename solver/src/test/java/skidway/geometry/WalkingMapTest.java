package skidway.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.door;
import static skidway.testkit.SiteBuilder.wall;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.site.Steps;
import skidway.site.Wall;
import skidway.site.WallOpening;

class WalkingMapTest {
  private static final double TOLERANCE_M = 0.0005;
  private static final Walker WALKER = new Walker(0.45, 4.4);
  private static final Set<String> ALL_WALLS = Set.of("W1", "W2", "W3", "W4");

  private static final String NOTHING = "MULTIPOLYGON EMPTY";
  private static final String BOX = "MULTIPOLYGON (((4 2, 6 2, 6 8, 4 8, 4 2)))";

  @Test
  void straightWhereNothingIsInTheWay() {
    checkWalk(NOTHING, "LINESTRING (1 1, 4 5)", 5);
  }

  @Test
  void noWayToWalkAtAll() {
    checkWalk(BOX, "LINESTRING (1 1, 1 1)", 0);
  }

  @Test
  void roundOneRectangleOnItsShorterSide() {
    // (1,6) to the corner (4,8), along the top, and the mirror image.
    checkWalk(BOX, "LINESTRING (1 6, 9 6)", 2 * Math.sqrt(13) + 2);
  }

  @Test
  void touchingAnObstacleIsNoDetour() {
    checkWalk(BOX, "LINESTRING (1 8, 9 8)", 8);
    checkWalk(BOX, "LINESTRING (4 1, 4 9)", 8);
    checkWalk(BOX, "LINESTRING (3 9, 5 7.999)", Double.POSITIVE_INFINITY);
  }

  @Test
  void outOfAPocket() {
    // A U that opens upwards; from its bottom over the right arm and down outside.
    checkWalk(
        "MULTIPOLYGON (((2 2, 8 2, 8 8, 7 8, 7 3, 3 3, 3 8, 2 8, 2 2)))",
        "LINESTRING (5 3, 10 2)",
        Math.hypot(2, 5) + 1 + Math.hypot(2, 6));
  }

  @Test
  void roundAReEntrantCornerOfTheBoundary() {
    Outline ell = Wkt.outline("POLYGON ((0 0, 10 0, 10 4, 4 4, 4 10, 0 10, 0 0))");
    WalkingMap map =
        WalkingMap.of(Places.site(ell, List.of(), List.of(), List.of()), Set.of(), WALKER);
    assertThat(map.metres(new Point(1, 8), new Point(8, 1)))
        .isCloseTo(Math.hypot(3, 4) + Math.hypot(4, 3), within(TOLERANCE_M));
  }

  @Test
  void nobodyPassesWhereObstaclesTouch() {
    String sharedEdge = "MULTIPOLYGON (((4 0, 6 0, 6 5, 4 5, 4 0)), ((4 5, 6 5, 6 10, 4 10, 4 5)))";
    String sharedCorner =
        "MULTIPOLYGON (((0 4, 5 4, 5 5, 0 5, 0 4)), ((5 5, 10 5, 10 6, 5 6, 5 5)))";
    checkWalk(sharedEdge, "LINESTRING (1 5, 9 5)", Double.POSITIVE_INFINITY);
    checkWalk(sharedCorner, "LINESTRING (2 1, 8 9)", Double.POSITIVE_INFINITY);
  }

  @Test
  void closedInAndOffTheSite() {
    String ring =
        "MULTIPOLYGON (((2 2, 8 2, 8 3, 2 3, 2 2)), ((2 7, 8 7, 8 8, 2 8, 2 7)),"
            + " ((2 3, 3 3, 3 7, 2 7, 2 3)), ((7 3, 8 3, 8 7, 7 7, 7 3)))";
    checkWalk(ring, "LINESTRING (5 5, 5 1)", Double.POSITIVE_INFINITY);
    checkWalk(ring, "LINESTRING (4 4, 6 6)", Math.sqrt(8));
    checkWalk(NOTHING, "LINESTRING (5 5, 5 11)", Double.POSITIVE_INFINITY);
  }

  @Test
  void wallsThatTouchOnlyAtTheirCentreLinesStillCloseTheCorner() {
    // A wall that runs on from another, bent by 60 degrees, from boundary to boundary.
    Point bend = new Point(5, 5);
    Point away = bend.plus(Point.unit(60).times(10));
    List<Wall> walls =
        List.of(
            new Wall("A", new Point(-1, 5), bend, 0.2, Starter.FULL, List.of()),
            new Wall("B", bend, away, 0.2, Starter.FULL, List.of()));
    Site site = Places.site(Outline.box(0, 0, 10, 10), walls, List.of(), List.of());
    WalkingMap map = WalkingMap.of(site, Set.of("A", "B"), WALKER);
    assertThat(map.metres(new Point(4, 4), new Point(4, 6))).isInfinite();
  }

  @Test
  void throughADoor() {
    Site site = aSite().deckHeight(0).build();
    WalkingMap map = WalkingMap.of(site, ALL_WALLS, WALKER);
    double slant = Math.hypot(2, 1.9);
    assertThat(map.metres(new Point(12, 14), new Point(12, 18)))
        .isCloseTo(2 * slant + 0.2, within(TOLERANCE_M));
  }

  @Test
  void lowWallsAreSteppedOver() {
    Site site = aSite().deckHeight(0).build();
    WalkingMap map = WalkingMap.of(site, Set.of(), WALKER);
    assertThat(map.metres(new Point(12, 14), new Point(12, 18))).isCloseTo(4, within(TOLERANCE_M));
  }

  @Test
  void nobodyStepsThroughAWindowOrOverAHighSill() {
    WallOpening window = new WallOpening("N1", 4, 1, 0.3, 2, false);
    WallOpening hatch = new WallOpening("D1", 4, 1, 0.5, 2, true);
    for (WallOpening opening : List.of(window, hatch)) {
      Site site = aSite().deckHeight(0).walls(house(opening)).build();
      assertThat(
              WalkingMap.of(site, ALL_WALLS, WALKER).metres(new Point(12, 14), new Point(12, 18)))
          .isInfinite();
    }
  }

  @Test
  void upTheStepsAndAcross() {
    // 3 m to the foot, 1.3 m of steps, 0.6 m of climb counted 4.4 times, 1.7 m on the deck.
    WalkingMap map = WalkingMap.of(aSite().walls().build(), Set.of(), WALKER);
    assertThat(map.metres(new Point(14.5, 12), new Point(14.5, 18)))
        .isCloseTo(3 + 1.3 + 2.64 + 1.7, within(TOLERANCE_M));
  }

  @Test
  void aRisenWallAcrossTheStepsClosesThem() {
    Site site = aSite().walls(house()).build();
    assertThat(WalkingMap.of(site, Set.of(), WALKER).metres(new Point(1, 1), new Point(15, 20)))
        .isFinite();
    assertThat(WalkingMap.of(site, ALL_WALLS, WALKER).metres(new Point(1, 1), new Point(15, 20)))
        .isInfinite();
  }

  @Test
  void aLowDeckIsNoBarrier() {
    WalkingMap map = WalkingMap.of(aSite().walls().deckHeight(0.45).build(), Set.of(), WALKER);
    assertThat(map.metres(new Point(5, 20), new Point(15, 20))).isCloseTo(10, within(TOLERANCE_M));
  }

  @Test
  void roundAFloorOpeningAndADeck() {
    Site site = aSite().walls().floorOpening("O", Outline.box(14, 19, 16, 21)).build();
    WalkingMap map = WalkingMap.of(site, Set.of(), WALKER);
    assertThat(map.metres(new Point(12, 20), new Point(18, 20)))
        .isCloseTo(2 * Math.sqrt(5) + 2, within(TOLERANCE_M));
    assertThat(map.metres(new Point(9, 20), new Point(21, 20)))
        .isCloseTo(2 * Math.hypot(0.9, 4.1) + 10.2, within(TOLERANCE_M));
  }

  @Test
  void betweenDecksOfOneHeightAndOfTwo() {
    Steps up = new Steps("S", new Point(4, 5), new Point(6, 5), 1);
    Deck west = new Deck("west", Outline.box(1, 1, 5, 9), 0.6, 2, List.of(), List.of());
    Deck east = new Deck("east", Outline.box(5, 1, 9, 9), 0.6, 2, List.of(), List.of());
    Deck high =
        new Deck("high", Outline.box(5, 1, 9, 9), 1.6, 2, List.<FloorOpening>of(), List.of(up));
    Outline boundary = Outline.box(0, 0, 10, 10);
    Point from = new Point(2, 5);
    Point to = new Point(8, 5);
    Site level = Places.site(boundary, List.of(), List.of(west, east), List.of());
    Site stepped = Places.site(boundary, List.of(), List.of(west, high), List.of());
    assertThat(WalkingMap.of(level, Set.of(), WALKER).metres(from, to))
        .isCloseTo(6, within(TOLERANCE_M));
    assertThat(WalkingMap.of(stepped, Set.of(), WALKER).metres(from, to))
        .isCloseTo(6 + 4.4, within(TOLERANCE_M));
  }

  @Test
  void aTiltedHouseIsClosedAtItsCorners() {
    for (double degrees = 0; degrees < 90; degrees += 7) {
      Site site = Tilted.house(degrees);
      WalkingMap map = WalkingMap.of(site, ALL_WALLS, WALKER);
      assertThat(map.metres(new Point(0, 0), new Point(0, 19)))
          .as("%s degrees", degrees)
          .isInfinite();
      assertThat(
              WalkingMap.of(site, Set.of("W1", "W2", "W3"), WALKER)
                  .metres(new Point(0, 0), new Point(0, 19)))
          .as("%s degrees", degrees)
          .isFinite();
    }
  }

  private static Wall[] house(WallOpening... openings) {
    return new Wall[] {
      wall("W1", 10, 16, 20, 16, Starter.FULL, openings),
      wall("W2", 20, 16, 20, 24, Starter.HALF),
      wall("W3", 20, 24, 10, 24, Starter.FULL),
      wall("W4", 10, 24, 10, 16, Starter.HALF)
    };
  }

  @Test
  void doorsAtBothEndsOfAWallLeaveItsCornersClosed() {
    Site site = aSite().deckHeight(0).walls(house(door("D1", 0, 1), door("D2", 9, 1))).build();
    WalkingMap map = WalkingMap.of(site, ALL_WALLS, WALKER);
    // Through D1, along the face of W4 at x = 10.1.
    assertThat(map.metres(new Point(10.1, 15), new Point(10.1, 17)))
        .isCloseTo(2, within(TOLERANCE_M));
    // Round the building's corner, which lies at (9.9, 15.9) and not at the centre lines' (10, 16).
    double round = Math.hypot(0.1, 0.6) + Math.hypot(0.2, 0.1);
    assertThat(map.metres(new Point(9.8, 16.5), new Point(10.1, 15.8)))
        .isCloseTo(round, within(TOLERANCE_M));
  }

  private static void checkWalk(String obstacles, String way, double expectedM) {
    Site site =
        Places.site(Outline.box(0, 0, 10, 10), List.of(), List.of(), Wkt.outlines(obstacles));
    List<Point> ends = Wkt.points(way);
    double metres = WalkingMap.of(site, Set.of(), WALKER).metres(ends.get(0), ends.get(1));
    if (Double.isInfinite(expectedM)) {
      assertThat(metres).isInfinite();
    } else {
      assertThat(metres).isCloseTo(expectedM, within(TOLERANCE_M));
    }
  }
}
