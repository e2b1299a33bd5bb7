package skidway.sheet;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.ChartRow;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.Footprint;
import skidway.site.Grip;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.KeepClear;
import skidway.site.Lane;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.OpenSide;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Starter;
import skidway.site.Steps;
import skidway.site.TruckStand;
import skidway.site.Wall;
import skidway.site.WallOpening;
import skidway.site.Yard;
import skidway.testkit.BundleBuilder;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/**
 * A made-up L-shaped house with 31 bundles of two loads in 12 stacks and a rack, one bundle set
 * down on the way and one without a spot. All positions are written in feet.
 */
final class SampleHouse {
  private static final double FOOT = 0.3048;

  private SampleHouse() {}

  static Task task() {
    Settings settings =
        Settings.defaults()
            .with(
                Setting.DECK_EDGE_SETBACK,
                4 * FOOT,
                "guard barricade along the edge, decided by the site lead")
            .with(Setting.STACK_HEIGHT, 5 * FOOT, "short crew");
    Delivery delivery =
        new Delivery(
            List.of(
                new Load("L1", LocalDateTime.of(2031, 5, 5, 8, 0), "T1"),
                new Load("L2", LocalDateTime.of(2031, 5, 6, 13, 30), "T1")),
            bundles());
    return new Task("Larkhollow house", site(), delivery, settings, new Figures(UnitSystem.US));
  }

  static Plan plan() {
    Task task = task();
    List<Spot> waiting = List.of(spot("S1", "yard south", 106, 24, 0, 16, 4, OpenSide.LEFT));
    return new Plan(
        task.jobName(),
        3,
        "6f1c02aa97d34e5b8c0d",
        "0b77e1d2",
        new Search(7, 200_000, false),
        stacks(),
        waiting,
        SampleSteps.of(task, stacks(), waiting.get(0)),
        List.of(),
        List.of(
            new Unplaced(
                "B31",
                Rule.STACK_HEIGHT,
                "On A3, the only spot long enough, the stack would be 5'-7\" high, limit 5'-0\".")),
        new Effort(146_000, 2_900, 9_300, 1_900, 21_600),
        List.of(
            new Baseline(
                "nearest first",
                "Each bundle goes to the nearest free spot as it comes off.",
                31,
                new Effort(171_000, 0, 48_000, 0, 20_100)),
            new Baseline(
                "longest first",
                "Long bundles at the bottom, short ones on top, zone by zone.",
                30,
                new Effort(188_000, 0, 39_000, 0, 19_800))),
        List.of(
            new Margin(Rule.ZONE_LOAD, "D2", 4.1, 4.79, false),
            new Margin(Rule.STACK_HEIGHT, "A3", 1.49, 1.524, false),
            new Margin(Rule.MACHINE_CAPACITY, "step 14, B14", 1190, 1360, false),
            new Margin(Rule.KEEP_CLEAR, "C1", 0.76, 0.61, true),
            new Margin(Rule.SPOTS_APART, "A1 and A2", 0.97, 0.3048, true)));
  }

  static List<Stack> stacks() {
    return List.of(
        stack(spot("D1", "deck", 50, 53, 0, 16, 3, OpenSide.RIGHT), "B03", "B17"),
        stack(spot("D2", "deck", 49, 46, 0, 16.5, 3, OpenSide.LEFT), "B01", "B05"),
        stack(spot("D3", "deck", 74, 46.5, 0, 12, 3, OpenSide.LEFT), "B02", "B06"),
        stack(spot("D4", "deck", 46, 64, 90, 12, 3, OpenSide.RIGHT), "B04", "B18"),
        stack(spot("A1", "yard south", 28, 29, 0, 16.5, 3.5, OpenSide.RIGHT), "B07", "B08", "B19"),
        stack(spot("A2", "yard south", 28, 19, 0, 16.5, 3.5, OpenSide.LEFT), "B09", "B20"),
        stack(
            spot("A3", "yard south", 82, 29, 0, 16.5, 3.5, OpenSide.RIGHT),
            "B10",
            "B11",
            "B21",
            "B22"),
        stack(spot("A4", "yard south", 82, 19, 0, 16.5, 3.5, OpenSide.LEFT), "B12", "B23", "B24"),
        stack(spot("A5", "yard south", 64, 24, 90, 14, 3.5, OpenSide.RIGHT), "B25", "B13"),
        stack(spot("C1", "yard west", 15, 46, 90, 16.5, 3.5, OpenSide.RIGHT), "B14", "B26"),
        stack(spot("C2", "yard west", 25, 46, 90, 16.5, 3.5, OpenSide.LEFT), "B15", "B27"),
        stack(spot("C3", "yard west", 19, 64, 20, 12, 3, OpenSide.RIGHT), "B28"),
        stack(rack("R1", "yard west", 27, 73, 0, 8, 4, OpenSide.RIGHT), "B16", "B29", "B30"));
  }

  private static List<Bundle> bundles() {
    List<Bundle> all = new ArrayList<>();
    double[] feet = {16, 12, 16, 12, 16, 12, 16, 16, 16, 16, 16, 14, 12, 16, 16, 4};
    for (int i = 1; i <= 31; i++) {
      double lengthFt = i == 31 ? 16 : i == 29 || i == 30 ? 3.5 : feet[(i - 1) % 16];
      lengthFt = i == 18 || i == 25 || i == 28 ? 12 : lengthFt;
      String load = i <= 16 ? "L1" : "L2";
      int order = i <= 16 ? i : i - 16;
      String id = i < 10 ? "B0" + i : "B" + i;
      all.add(
          BundleBuilder.aBundle(id)
              .load(load, order)
              .size(lengthFt * FOOT, (i % 3 == 0 ? 2.5 : 3) * FOOT, 1.1 * FOOT)
              .weighing(55 * lengthFt + 2 * i)
              .build());
    }
    return all;
  }

  private static Site site() {
    List<Wall> walls =
        List.of(
            wall(
                "W1",
                40,
                40,
                84,
                40,
                Starter.FULL,
                opening("door", 12, 3, 0, true),
                opening("w1", 24, 5, 3, false)),
            wall("W2", 84, 40, 84, 58, Starter.HALF, opening("w2", 7, 4, 3, false)),
            wall("W3", 84, 58, 64, 58, Starter.FULL, opening("back door", 6, 3, 0, true)),
            wall("W4", 64, 58, 64, 74, Starter.HALF),
            wall("W5", 64, 74, 40, 74, Starter.FULL, opening("w3", 9, 6, 3, false)),
            wall("W6", 40, 74, 40, 40, Starter.HALF, opening("w4", 14, 4, 3, false)));
    Deck deck =
        new Deck(
            "deck",
            outline(39.6, 39.6, 84.4, 39.6, 84.4, 58.4, 64.4, 58.4, 64.4, 74.4, 39.6, 74.4),
            2 * FOOT,
            4.79,
            List.of(new FloorOpening("stair opening", box(53, 61, 57, 71))),
            List.of(new Steps("front steps", at(53.5, 35.5), at(53.5, 40.6), 4 * FOOT)),
            Optional.of(joists()),
            OptionalDouble.of(9000));
    return new Site(
        "Lot 9, Larkhollow lane",
        outline(2, 1, 118, 1, 118, 72, 108, 84, 2, 84),
        102,
        0.1524,
        walls,
        List.of(deck),
        List.of(
            new Yard(
                "yard south",
                box(16, 14, 116, 33.5),
                71.8,
                "sandy gravel",
                OptionalDouble.of(0.02),
                OptionalDouble.empty()),
            new Yard("yard west", box(8, 35, 33, 78), 71.8)),
        List.of(
            new Lane("crew lane", List.of(at(53.5, 12), at(53.5, 36)), 5 * FOOT),
            new Lane(
                "east lane",
                List.of(at(97, 34.5), at(89, 36.5), at(89, 66), at(70, 66)),
                4 * FOOT)),
        List.of(
            new KeepClear(
                "K1",
                outline(96, 38, 100, 38, 103, 74, 99, 74),
                2 * FOOT,
                "open trench for the drain",
                false,
                true,
                OptionalDouble.of(4 * FOOT)),
            new KeepClear("K2", round(30, 79, 2.5), 1.5 * FOOT, "big oak", false),
            new KeepClear("K3", box(74, 59, 79, 63), 0, "back door swing", true)),
        List.of(new TruckStand("T1", footprint(62, 7, 0, 45, 9))),
        List.of(
            new OverheadLine(
                "street line", at(-40, 82), at(200, 76), 13_800, OptionalDouble.empty())),
        new Machine(
            "telehandler",
            List.of(
                new MachineStand("M1", at(42, 36)),
                new MachineStand("M2", at(92, 31)),
                new MachineStand("M3", at(36.5, 56))),
            List.of(new ChartRow(6, 2700), new ChartRow(9, 1800), new ChartRow(12, 1360)),
            new Grip.Forks(OptionalDouble.of(2 * FOOT)),
            OptionalDouble.of(8 * FOOT),
            60,
            "R. Okafor & crew"),
        List.of());
  }

  private static Joists joists() {
    return new Joists(
        90,
        16 * FOOT / 12,
        at(40, 40),
        List.of(at(40, 40), at(40, 58), at(40, 74)),
        new JoistDesign.LiveLoad(1.915));
  }

  private static Stack stack(Spot spot, String... bundleIds) {
    return new Stack(spot, List.of(bundleIds));
  }

  static Spot spot(
      String id,
      String zone,
      double x,
      double y,
      double heading,
      double length,
      double width,
      OpenSide side) {
    return new Spot(
        id,
        zone,
        SpotKind.STACK,
        footprint(x, y, heading, length, width),
        side,
        3 * FOOT,
        OptionalDouble.empty());
  }

  private static Spot rack(
      String id,
      String zone,
      double x,
      double y,
      double heading,
      double length,
      double width,
      OpenSide side) {
    return new Spot(
        id,
        zone,
        SpotKind.RACK,
        footprint(x, y, heading, length, width),
        side,
        3 * FOOT,
        OptionalDouble.empty());
  }

  private static Footprint footprint(
      double x, double y, double heading, double length, double width) {
    return new Footprint(at(x, y), heading, length * FOOT, width * FOOT);
  }

  private static Wall wall(
      String id,
      double x0,
      double y0,
      double x1,
      double y1,
      Starter starter,
      WallOpening... openings) {
    return new Wall(id, at(x0, y0), at(x1, y1), 8 * FOOT / 12, starter, List.of(openings));
  }

  private static WallOpening opening(
      String id, double from, double width, double sill, boolean door) {
    return new WallOpening(id, from * FOOT, width * FOOT, sill * FOOT, 6.7 * FOOT, door);
  }

  private static Point at(double x, double y) {
    return new Point(x * FOOT, y * FOOT);
  }

  private static Outline box(double x0, double y0, double x1, double y1) {
    return Outline.box(x0 * FOOT, y0 * FOOT, x1 * FOOT, y1 * FOOT);
  }

  private static Outline outline(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(at(xy[i], xy[i + 1]));
    }
    return new Outline(corners);
  }

  private static Outline round(double x, double y, double radius) {
    return new Outline(
        Stream.iterate(0, a -> a < 360, a -> a + 30)
            .map(a -> at(x, y).plus(Point.unit(a).times(radius * FOOT)))
            .toList());
  }
}
