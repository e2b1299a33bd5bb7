package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.testkit.PlanBuilder;
import skidway.testkit.SiteBuilder;

final class PlaceRulesTest {
  private static final Yard WIDE_YARD = new Yard("yard", Outline.box(1, 1, 39, 27.9), 70);
  private static final Spot MIDDLE = spot("Y1", "yard", 10, 8, 4.5, 0.9);

  private static List<String> broken(Rule rule, SiteBuilder site, Spot... spots) {
    Task task = task(site.build(), aBundle("B1").weighing(100).build());
    PlanBuilder plan = aPlan();
    for (Spot spot : spots) {
      plan.stack(spot, "B1");
    }
    return Audited.sentences(rule, task, plan);
  }

  private static SiteBuilder wide() {
    return aSite().yards(WIDE_YARD);
  }

  private static Spot turned(Spot spot, double headingDeg, OpenSide side) {
    Footprint f = spot.footprint();
    return new Spot(
        spot.id(),
        spot.zoneId(),
        spot.kind(),
        new Footprint(f.centre(), headingDeg, f.lengthM(), f.widthM()),
        side,
        spot.stripM(),
        spot.massLimitKg());
  }

  @Test
  void insideZoneLetsAStackTouchTheYardsOutline() {
    assertThat(broken(Rule.INSIDE_ZONE, aSite(), spot("Y1", "yard", 7.25, 6.45, 4.5, 0.9)))
        .isEmpty();
    assertThat(broken(Rule.INSIDE_ZONE, aSite(), spot("Y1", "yard", 7.25, 6.35, 4.5, 0.9)))
        .containsExactly("Stack Y1 sticks out of yard by 0.10 m.");
  }

  @Test
  void insideZoneLetsAStackTouchTheDecksEdgeAndNoMore() {
    assertThat(broken(Rule.INSIDE_ZONE, aSite(), spot("D1", "deck", 11.9, 20, 4, 0.9))).isEmpty();
    assertThat(broken(Rule.INSIDE_ZONE, aSite(), spot("D1", "deck", 10, 20, 4, 0.9)))
        .contains("Stack D1 sticks out of deck by 1.90 m.");
  }

  @Test
  void insideZoneKeepsTheOpenSideOffDecksTrucksTrenchesAndFences() {
    assertThat(broken(Rule.INSIDE_ZONE, wide(), spot("Y1", "yard", 25, 15, 4.5, 0.9))).isEmpty();
    assertThat(broken(Rule.INSIDE_ZONE, wide(), spot("Y1", "yard", 15, 14.9, 4.5, 0.9)))
        .containsExactly("The open side of stack Y1 reaches 0.36 m into deck.");
    Spot south = turned(spot("Y1", "yard", 18, 4.5, 4.5, 0.9), 0, OpenSide.RIGHT);
    assertThat(broken(Rule.INSIDE_ZONE, wide(), south))
        .containsExactly("The open side of stack Y1 reaches 0.16 m into truck stand truck.");
    SiteBuilder trench = wide().keepClear("trench", Outline.box(8, 9, 12, 9.3), 0, false);
    assertThat(broken(Rule.INSIDE_ZONE, trench, MIDDLE))
        .containsExactly("The open side of stack Y1 reaches 0.36 m into keep-clear trench.");
    SiteBuilder grass = wide().keepClear("grass", Outline.box(8, 9, 12, 9.3), 0, true);
    assertThat(broken(Rule.INSIDE_ZONE, grass, MIDDLE)).isEmpty();
    assertThat(broken(Rule.INSIDE_ZONE, wide(), spot("Y1", "yard", 10, 27, 4.5, 0.9)))
        .containsExactly("The open side of stack Y1 sticks out of the site by 0.36 m.");
  }

  @Test
  void insideZoneKeepsAYardsStacksOffDecksThatTheYardCovers() {
    Spot touching = turned(spot("Y1", "yard", 15, 15.9 - 0.45, 4.5, 0.9), 0, OpenSide.RIGHT);
    assertThat(broken(Rule.INSIDE_ZONE, wide(), touching)).isEmpty();
    Spot over = turned(spot("Y1", "yard", 15, 16 - 0.45, 4.5, 0.9), 0, OpenSide.RIGHT);
    assertThat(broken(Rule.INSIDE_ZONE, wide(), over))
        .containsExactly("Stack Y1 stands 0.10 m within deck, not its zone.");
    Spot onDeck = spot("Y1", "yard", 15, 20, 4.5, 0.9);
    assertThat(broken(Rule.INSIDE_ZONE, wide(), onDeck))
        .contains("Stack Y1 stands 3.75 m within deck, not its zone.");
    assertThat(broken(Rule.INSIDE_ZONE, wide(), MIDDLE)).isEmpty();
  }

  @Test
  void insideZoneKeepsADecksStacksOffAnotherDeck() {
    Spot onDeck = spot("D1", "deck", 15, 19.5, 4, 0.9);
    assertThat(broken(Rule.INSIDE_ZONE, porch(25), onDeck)).isEmpty();
    assertThat(broken(Rule.INSIDE_ZONE, porch(17), onDeck)).isEmpty();
    assertThat(broken(Rule.INSIDE_ZONE, porch(16.8), onDeck))
        .containsExactly("Stack D1 stands 0.20 m within porch, not its zone.");
  }

  private static SiteBuilder porch(double fromX) {
    return aSite().porch("porch", Outline.box(fromX, 19, fromX + 2, 21));
  }

  @Test
  void floorOpeningAppliesToTheOpenSideToo() {
    Spot onDeck = spot("D1", "deck", 15, 19.5, 4, 0.9);
    SiteBuilder far = aSite().floorOpening("stair", Outline.box(14, 21.779, 16, 22.5));
    assertThat(broken(Rule.FLOOR_OPENING, far, onDeck)).isEmpty();
    SiteBuilder near = aSite().floorOpening("stair", Outline.box(14, 20.5, 16, 22.5));
    assertThat(broken(Rule.FLOOR_OPENING, near, onDeck))
        .containsExactly(
            "Stack D1 stands 0.55 m from floor opening stair, limit 1.83 m.",
            "The open side of stack D1 reaches 0.36 m over floor opening stair.");
    assertThat(broken(Rule.FLOOR_OPENING, near, MIDDLE)).isEmpty();
  }

  @Test
  void workingStripEndsOutsideAndAtTheWallsEnds() {
    assertThat(broken(Rule.WORKING_STRIP, wide(), spot("Y1", "yard", 15, 14.23, 4, 0.9))).isEmpty();
    assertThat(broken(Rule.WORKING_STRIP, wide(), spot("Y1", "yard", 15, 14.33, 4, 0.9)))
        .containsExactly("Stack Y1 stands 0.10 m within the working strip of wall W1.");
    // East of the south wall's end, only the east wall's strip counts: 0.1 + 1.22 m outside.
    assertThat(broken(Rule.WORKING_STRIP, wide(), spot("Y1", "yard", 22, 15.5, 4, 0.9))).isEmpty();
    assertThat(broken(Rule.WORKING_STRIP, aSite(), spot("D1", "deck", 13.01, 20, 4, 0.9)))
        .isEmpty();
    assertThat(broken(Rule.WORKING_STRIP, aSite(), spot("D1", "deck", 13.0, 20, 4, 0.9)))
        .containsExactly("Stack D1 stands 0.01 m within the working strip of wall W4.");
  }

  @Test
  void lanesClearMeasuresFromTheLanesMiddleAlsoRoundABend() {
    Point[] bend = {new Point(5, 11), new Point(14, 11), new Point(14, 6)};
    assertThat(broken(Rule.LANES_CLEAR, aSite().lane("L", 3.5, bend), MIDDLE)).isEmpty();
    assertThat(broken(Rule.LANES_CLEAR, aSite().lane("L", 4, bend), MIDDLE))
        .containsExactly("Stack Y1 stands 1.75 m from the middle of lane L, limit 2.00 m.");
    Point[] across = {new Point(10, 6), new Point(10, 12)};
    assertThat(broken(Rule.LANES_CLEAR, aSite().lane("L", 1, across), MIDDLE))
        .containsExactly("Stack Y1 stands 0.00 m from the middle of lane L, limit 0.50 m.");
  }

  @Test
  void truckClearLetsAStackTouchTheTruckStand() {
    assertThat(broken(Rule.TRUCK_CLEAR, wide(), spot("Y1", "yard", 9.75, 2, 4.5, 0.9))).isEmpty();
    assertThat(broken(Rule.TRUCK_CLEAR, wide(), spot("Y1", "yard", 9.8, 2, 4.5, 0.9)))
        .containsExactly("Stack Y1 stands 0.05 m within truck stand truck.");
  }

  @Test
  void machineClearLeavesRoomAroundTheStand() {
    assertThat(broken(Rule.MACHINE_CLEAR, wide(), spot("Y1", "yard", 20, 6.95, 4.5, 0.9)))
        .isEmpty();
    assertThat(broken(Rule.MACHINE_CLEAR, wide(), spot("Y1", "yard", 20, 6.9, 4.5, 0.9)))
        .containsExactly("Stack Y1 stands 1.45 m from machine stand M, limit 1.50 m.");
    assertThat(broken(Rule.MACHINE_CLEAR, wide(), spot("Y1", "yard", 26, 6.9, 4.5, 0.9))).isEmpty();
  }

  @Test
  void keepClearHasAMarginAndNothingStandsInside() {
    Outline tree = Outline.box(13, 7, 14, 9);
    assertThat(broken(Rule.KEEP_CLEAR, aSite().keepClear("tree", tree, 0.75, false), MIDDLE))
        .isEmpty();
    assertThat(broken(Rule.KEEP_CLEAR, aSite().keepClear("tree", tree, 0.8, false), MIDDLE))
        .containsExactly("Stack Y1 stands 0.75 m from keep-clear tree (test), limit 0.80 m.");
    SiteBuilder swamp = aSite().keepClear("swamp", Outline.box(5, 5, 20, 12), 0, true);
    assertThat(broken(Rule.KEEP_CLEAR, swamp, MIDDLE)).hasSize(1);
  }

  @Test
  void excavationEdgeIsTheFarthestOfSetbackMarginAndDepth() {
    // The stack's end is 12.25, 0.75 m from the trench.
    assertThat(dug(0, Double.NaN, 13)).isEmpty();
    assertThat(dug(0, 0.75, 13)).isEmpty();
    assertThat(dug(0.75, 0.1, 13)).isEmpty();
    assertThat(dug(0.8, 0.1, 13))
        .containsExactly("Stack Y1 stands 0.75 m from excavation trench (test), limit 0.80 m.");
    assertThat(dug(0, 0.9, 13))
        .containsExactly("Stack Y1 stands 0.75 m from excavation trench (test), limit 0.90 m.");
    assertThat(dug(0, Double.NaN, 12.8))
        .containsExactly("Stack Y1 stands 0.55 m from excavation trench (test), limit 0.61 m.");
    assertThat(dug(0, Double.NaN, 12))
        .containsExactly("Stack Y1 stands 0.25 m within excavation trench (test).");
    SiteBuilder tree = aSite().keepClear("tree", Outline.box(12.8, 7, 14, 9), 0, false);
    assertThat(broken(Rule.EXCAVATION_EDGE, tree, MIDDLE)).isEmpty();
    SiteBuilder trench = aSite().excavation("trench", Outline.box(12, 7, 14, 9), 9, 9);
    assertThat(broken(Rule.KEEP_CLEAR, trench, MIDDLE)).isEmpty();
  }

  private static List<String> dug(double marginM, double depthM, double fromX) {
    Outline outline = Outline.box(fromX, 7, 14, 9);
    return broken(
        Rule.EXCAVATION_EDGE, aSite().excavation("trench", outline, marginM, depthM), MIDDLE);
  }

  @Test
  void spotsApartKeepsAGapAndTheOpenSideFree() {
    assertThat(broken(Rule.SPOTS_APART, wide(), MIDDLE, spot("Y2", "yard", 14.8, 8, 4.5, 0.9)))
        .isEmpty();
    assertThat(broken(Rule.SPOTS_APART, wide(), MIDDLE, spot("Y2", "yard", 10, 9.81, 4.5, 0.9)))
        .isEmpty();
    assertThat(broken(Rule.SPOTS_APART, wide(), MIDDLE, spot("Y2", "yard", 10, 9.5, 4.5, 0.9)))
        .containsExactly("Stack Y2 stands 0.31 m within the open side of stack Y1.");
    assertThat(broken(Rule.SPOTS_APART, wide(), MIDDLE, spot("Y2", "yard", 10.5, 7.2, 4.5, 0.9)))
        .contains("Stack Y1 and stack Y2 overlap by 0.10 m.");
  }

  @Test
  void spotsApartCountsWaitingPlaces() {
    Task task = task(aSite().build(), aBundle("B1").build());
    PlanBuilder plan = aPlan().stack(MIDDLE, "B1").waiting(spot("T1", "yard", 14.7, 8, 4.5, 0.9));
    assertThat(Audited.sentences(Rule.SPOTS_APART, task, plan))
        .containsExactly("Stack Y1 stands 0.20 m from waiting place T1, limit 0.30 m.");
  }
}
