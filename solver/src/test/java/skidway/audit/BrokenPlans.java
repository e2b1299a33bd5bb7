package skidway.audit;

import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.ChartRow;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.OpenSide;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.testkit.SiteBuilder;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/** For each rule a plan that breaks this rule and no other. */
final class BrokenPlans {
  /** A plan beside its job. */
  record Case(Task task, PlanBuilder plan) {}

  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private static final Spot Y2 = spot("Y2", "yard", 15, 8, 4.5, 0.9);
  private static final Bundle B1 = first().build();
  private static final Bundle B2 = second().build();

  /** A 2x10 joist, 1 1/2 by 9 1/4 in. */
  private static final double JOIST_SECTION_M3 = 3.505e-4;

  private static final double JOIST_AREA_M2 = 8.95e-3;

  private BrokenPlans() {}

  private static BundleBuilder first() {
    return aBundle("B1").load("L1", 1).weighing(500);
  }

  private static BundleBuilder second() {
    return aBundle("B2").load("L1", 2).weighing(500);
  }

  static Map<Rule, Case> all() {
    Map<Rule, Case> cases = new EnumMap<>(Rule.class);
    cases.put(Rule.KNOWN, one(aSite(), spot("Y1", "meadow", 10, 8, 4.5, 0.9), B1));
    cases.put(Rule.ONCE, listedAsUnplacedToo());
    cases.put(Rule.INSIDE_ZONE, one(aSite(), spot("Y1", "yard", 7, 8, 4.5, 0.9), B1));
    cases.put(Rule.DECK_EDGE, nearTheEdge());
    cases.put(Rule.FLOOR_OPENING, besideFloorOpening());
    cases.put(Rule.WORKING_STRIP, atTheWall());
    cases.put(Rule.LANES_CLEAR, one(aSite().lane("L", 1.2, at(5, 9), at(30, 9)), Y1, B1));
    cases.put(Rule.TRUCK_CLEAR, besideTheTruck());
    cases.put(Rule.MACHINE_CLEAR, one(aSite(), spot("Y1", "yard", 20, 6.6, 4.5, 0.9), B1));
    cases.put(Rule.KEEP_CLEAR, besideKeepClear());
    cases.put(Rule.EXCAVATION_EDGE, besideATrench());
    cases.put(Rule.OVERHEAD_LINE, besideAnOverheadLine());
    cases.put(Rule.YARD_SLOPE, one(aSite().yards(yard(70, 0.06, 9999)), Y1, B1));
    cases.put(Rule.SPOTS_APART, two(spot("Y2", "yard", 14.7, 8, 4.5, 0.9)));
    cases.put(Rule.FITS_SPOT, one(aSite(), Y1, first().size(4.6, 0.6, 0.4).build()));
    cases.put(Rule.STACK_HEIGHT, one(aSite(), Y1, first().size(4, 0.6, 1.8).build()));
    cases.put(Rule.STACK_SLENDER, one(aSite(), Y1, first().size(4, 0.4, 1.3).build()));
    cases.put(Rule.STACK_TIERS, nineTiers());
    cases.put(Rule.TIER_SUPPORT, longOnShort());
    cases.put(Rule.SPOT_MASS, one(aSite(), massLimit(Y1, 400), B1));
    cases.put(Rule.ZONE_LOAD, one(aSite(), deckSpot(), first().weighing(800).build()));
    cases.put(Rule.BEARING_APART, bearersSideBySide());
    cases.put(Rule.JOIST_BENDING, onJoists(JOIST_SECTION_M3 / 10, JOIST_AREA_M2));
    cases.put(Rule.JOIST_SHEAR, onJoists(JOIST_SECTION_M3, JOIST_AREA_M2 / 30));
    cases.put(Rule.ZONE_TOTAL, one(aSite().yards(yard(70, 0, 400)), Y1, B1));
    cases.put(Rule.GROUND_PRESSURE, one(aSite().yards(yard(20, 0, 9999)), Y1, B1));
    cases.put(Rule.GROUND_CLEARANCE, onLowBearers());
    cases.put(Rule.BEARER_SPACING, onTwoBearers());
    cases.put(Rule.RACK_LENGTH, inRack(aBundle("B1").piece("W1", 1, 1, 1.5)));
    cases.put(Rule.RACK_ROOM, inRack(fullRack()));
    cases.put(Rule.MACHINE_REACH, one(aSite().machine(shortArm()), Y1, B1));
    cases.put(Rule.MACHINE_CAPACITY, tooHeavyToLift());
    cases.putAll(BrokenLifts.all());
    cases.put(Rule.PATHS_OPEN, inTheGapOfAHedge());
    cases.put(Rule.OFF_ORDER, secondFirst());
    cases.put(Rule.STEPS_BUILD, stepMissing());
    cases.put(Rule.PLACED, new Case(task(aSite().build(), B1), aPlan().unplaced("B1")));
    return cases;
  }

  private static Case one(SiteBuilder site, Spot spot, Bundle bundle) {
    return new Case(task(site.build(), bundle), aPlan().stack(spot, bundle.id()));
  }

  private static Case two(Spot second) {
    return new Case(task(aSite().build(), B1, B2), aPlan().stack(Y1, "B1").stack(second, "B2"));
  }

  private static Case listedAsUnplacedToo() {
    return new Case(task(aSite().build(), B1), aPlan().stack(Y1, "B1").unplaced("B1"));
  }

  private static Spot deckSpot() {
    return spot("D1", "deck", 15, 19.5, 4, 0.9);
  }

  private static Case besideFloorOpening() {
    return one(
        aSite().floorOpening("stair", Outline.box(14, 21.5, 16, 22.5)),
        deckSpot(),
        first().weighing(100).build());
  }

  private static Case nearTheEdge() {
    return one(aSite(), spot("D1", "deck", 15, 18.5, 4, 0.9), first().weighing(100).build());
  }

  private static Yard yard(double allowedKpa, double slope, double totalKg) {
    return new Yard(
        "yard",
        Outline.box(5, 6, 30, 12),
        allowedKpa,
        "",
        OptionalDouble.of(slope),
        OptionalDouble.of(totalKg));
  }

  private static Case tooHeavyToLift() {
    return one(aSite().yards(yard(200, 0, 9999)), Y1, first().weighing(2500).build());
  }

  private static Case besideATrench() {
    Outline trench = Outline.box(12.75, 7.5, 14, 8.5);
    return one(aSite().excavation("trench", trench, 0, 0.8), Y1, B1);
  }

  /** Near the stack's end, far enough from the hook, which stays above its middle. */
  private static Case besideAnOverheadLine() {
    OverheadLine line =
        new OverheadLine("L", at(4.75, 0), at(4.75, 28), 7200, OptionalDouble.empty());
    return one(aSite().overheadLine(line), Y1, B1);
  }

  /** Back to back, a gap apart; bearers that reach far carry both on the same strip of deck. */
  private static Case bearersSideBySide() {
    Settings reaching = Settings.defaults().with(Setting.BEARER_REACH, 0.25, "long bearers");
    Bundle b1 = first().weighing(100).build();
    Bundle b2 = second().weighing(100).build();
    return new Case(
        task(aSite().build(), reaching, b1, b2),
        aPlan()
            .stack(openToTheSouth(spot("D1", "deck", 15, 19.5, 4, 0.6)), "B1")
            .stack(spot("D2", "deck", 15, 20.5, 4, 0.6), "B2"));
  }

  private static Spot openToTheSouth(Spot spot) {
    return new Spot(
        spot.id(),
        spot.zoneId(),
        spot.kind(),
        spot.footprint(),
        OpenSide.RIGHT,
        spot.stripM(),
        spot.massLimitKg());
  }

  /** Joists from north to south every 16 in, held up at both edges and in the middle. */
  private static Case onJoists(double sectionModulusM3, double areaM2) {
    JoistDesign lumber =
        new JoistDesign.Lumber("2x10", 7e6, 1.2e6, sectionModulusM3, areaM2, 0.5, "test");
    List<Point> supports = List.of(at(15, 15.9), at(15, 20), at(15, 24.1));
    Joists joists = new Joists(90, 0.4064, at(10, 16), supports, lumber);
    return one(aSite().joists(joists), deckSpot(), first().weighing(400).build());
  }

  private static Case onLowBearers() {
    Settings low = Settings.defaults().with(Setting.BEARER_HEIGHT, 0.05, "2x4 flat");
    return new Case(task(aSite().build(), low, B1), aPlan().stack(Y1, "B1"));
  }

  private static Case onTwoBearers() {
    Case good = one(aSite(), Y1, B1);
    return new Case(
        good.task(), good.plan().bearers(row -> new BearerRow(2, 3.4, 0.3, row.lengthM())));
  }

  private static Case atTheWall() {
    Spot spot = spot("Y1", "yard", 17.5, 14.3, 4, 0.9);
    return one(aSite().yards(new Yard("yard", Outline.box(5, 6, 30, 15), 70)), spot, B1);
  }

  private static Case besideTheTruck() {
    Spot spot = spot("Y1", "yard", 14, 3.45, 4, 0.9);
    return one(aSite().yards(new Yard("yard", Outline.box(5, 0.5, 30, 12), 70)), spot, B1);
  }

  private static Case besideKeepClear() {
    return one(aSite().keepClear("tree", Outline.box(12.75, 7.5, 14, 8.5), 1, false), Y1, B1);
  }

  private static Case nineTiers() {
    Bundle[] bundles = new Bundle[9];
    String[] ids = new String[9];
    for (int i = 0; i < 9; i++) {
      ids[i] = "B" + (i + 1);
      bundles[i] = aBundle(ids[i]).load("L1", i + 1).size(4, 0.6, 0.1).weighing(50).build();
    }
    return new Case(task(aSite().build(), bundles), aPlan().stack(Y1, ids));
  }

  private static Case longOnShort() {
    Bundle bottom = first().size(3.5, 0.6, 0.4).build();
    Bundle top = second().size(4.5, 0.6, 0.4).build();
    return new Case(task(aSite().build(), bottom, top), aPlan().stack(Y1, "B1", "B2"));
  }

  private static Spot massLimit(Spot spot, double kg) {
    return new Spot(
        spot.id(),
        spot.zoneId(),
        spot.kind(),
        spot.footprint(),
        spot.openSide(),
        spot.stripM(),
        OptionalDouble.of(kg));
  }

  private static Case inRack(BundleBuilder bundle) {
    return one(aSite(), rack("R1", "yard", 10, 8, 0.5, 0.5), bundle.build());
  }

  private static BundleBuilder fullRack() {
    BundleBuilder bundle = aBundle("B1");
    for (int position = 1; position <= 6; position++) {
      bundle.piece("W1", 1, position, 0.5);
    }
    return bundle;
  }

  private static Machine shortArm() {
    return new Machine(
        "short arm", List.of(new MachineStand("M", at(20, 5))), List.of(new ChartRow(5, 3000)));
  }

  /** A hedge across the whole site leaves one gap, and the stack stands in it. */
  private static Case inTheGapOfAHedge() {
    SiteBuilder site =
        aSite()
            .yards(new Yard("yard", Outline.box(5, 6, 30, 15), 70))
            .keepClear("hedge west", Outline.box(0, 12.5, 14, 13), 0, false)
            .keepClear("hedge east", Outline.box(16, 12.5, 40, 13), 0, false);
    Bundle small = first().size(1.8, 0.5, 0.4).build();
    return one(site, spot("Y1", "yard", 15, 12.75, 1.9, 0.5), small);
  }

  private static Case secondFirst() {
    Site site = aSite().build();
    Task task = task(site, B1, B2);
    return new Case(
        task,
        aPlan()
            .stack(Y1, "B1")
            .stack(Y2, "B2")
            .steps(place(task, 1, B2, Y2, 1), place(task, 2, B1, Y1, 1)));
  }

  private static Case stepMissing() {
    Task task = task(aSite().build(), B1, B2);
    return new Case(task, aPlan().stack(Y1, "B1").stack(Y2, "B2").steps(place(task, 1, B1, Y1, 1)));
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }
}
