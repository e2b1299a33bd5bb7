package skidway.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import skidway.site.ChartRow;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.Footprint;
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

/**
 * A flat site with a 10 by 8 m house, a yard south of it and a truck in the far south:
 *
 * <pre>
 *   y
 *  28 +----------------------------+
 *     |        W3 (north)          |
 *  24 |      +----------+          |
 *     |   W4 |   deck   | W2       |
 *  16 |      +--door----+          |
 *     |        W1 (south)          |
 *  12 |  +------------------+      |
 *     |  |      yard        |      |   machine stand "M" at (20, 5)
 *   6 |  +------------------+      |
 *   2 |          [truck]           |
 *   0 +----------------------------+ x = 40
 *            10   ...    20
 * </pre>
 */
public final class SiteBuilder {
  private List<Wall> walls =
      List.of(
          wall("W1", 10, 16, 20, 16, Starter.FULL, door("D1", 4, 1.0)),
          wall("W2", 20, 16, 20, 24, Starter.HALF),
          wall("W3", 20, 24, 10, 24, Starter.FULL),
          wall("W4", 10, 24, 10, 16, Starter.HALF));
  private final List<Deck> porches = new ArrayList<>();
  private double deckHeightM = 0.6;
  private double deckAllowedKpa = 2.4;
  private Optional<Joists> joists = Optional.empty();
  private OptionalDouble deckTotalKg = OptionalDouble.empty();
  private final List<OverheadLine> overheadLines = new ArrayList<>();
  private List<FloorOpening> floorOpenings = List.of();
  private List<Yard> yards = List.of(new Yard("yard", Outline.box(5, 6, 30, 12), 70));
  private List<Lane> lanes = List.of();
  private final List<KeepClear> keepClears = new ArrayList<>();
  private Machine machine =
      new Machine(
          "test machine",
          List.of(new MachineStand("M", new Point(20, 5))),
          List.of(new ChartRow(10, 3000), new ChartRow(20, 2000), new ChartRow(30, 1000)));
  private final List<Spot> spots = new ArrayList<>();

  public static SiteBuilder aSite() {
    return new SiteBuilder();
  }

  public static Wall wall(
      String id, double x0, double y0, double x1, double y1, Starter starter, WallOpening... open) {
    return new Wall(id, new Point(x0, y0), new Point(x1, y1), 0.2, starter, List.of(open));
  }

  public static WallOpening door(String id, double fromM, double widthM) {
    return new WallOpening(id, fromM, widthM, 0, 2.1, true);
  }

  /** A stack spot along the x axis whose open side looks to the north. */
  public static Spot spot(String id, String zone, double x, double y, double length, double width) {
    return new Spot(
        id,
        zone,
        SpotKind.STACK,
        new Footprint(new Point(x, y), 0, length, width),
        OpenSide.LEFT,
        0.91,
        OptionalDouble.empty());
  }

  /** A standing rack along the x axis whose open side looks to the north. */
  public static Spot rack(String id, String zone, double x, double y, double length, double width) {
    return new Spot(
        id,
        zone,
        SpotKind.RACK,
        new Footprint(new Point(x, y), 0, length, width),
        OpenSide.LEFT,
        0.91,
        OptionalDouble.empty());
  }

  public SiteBuilder walls(Wall... some) {
    walls = List.of(some);
    return this;
  }

  /** All walls stand as high as this already. */
  public SiteBuilder builtWalls(double metres) {
    walls =
        walls.stream()
            .map(
                w ->
                    new Wall(
                        w.id(),
                        w.start(),
                        w.end(),
                        w.thicknessM(),
                        w.starter(),
                        w.openings(),
                        metres))
            .toList();
    return this;
  }

  /** Adds a second deck, as high and as strong as the first, without steps. */
  public SiteBuilder porch(String id, Outline outline) {
    porches.add(new Deck(id, outline, deckHeightM, deckAllowedKpa, List.of(), List.of()));
    return this;
  }

  public SiteBuilder deckHeight(double metres) {
    deckHeightM = metres;
    return this;
  }

  public SiteBuilder deckAllowed(double kpa) {
    deckAllowedKpa = kpa;
    return this;
  }

  public SiteBuilder joists(Joists some) {
    joists = Optional.of(some);
    return this;
  }

  public SiteBuilder deckTotal(double kg) {
    deckTotalKg = OptionalDouble.of(kg);
    return this;
  }

  public SiteBuilder overheadLine(OverheadLine line) {
    overheadLines.add(line);
    return this;
  }

  public SiteBuilder floorOpening(String id, Outline outline) {
    floorOpenings = List.of(new FloorOpening(id, outline));
    return this;
  }

  public SiteBuilder yards(Yard... some) {
    yards = List.of(some);
    return this;
  }

  public SiteBuilder lane(String id, double widthM, Point... line) {
    lanes = List.of(new Lane(id, List.of(line), widthM));
    return this;
  }

  public SiteBuilder keepClear(String id, Outline outline, double marginM, boolean walkable) {
    keepClears.add(new KeepClear(id, outline, marginM, "test", walkable));
    return this;
  }

  /** An open trench or pit; a depth of NaN was not measured. */
  public SiteBuilder excavation(String id, Outline outline, double marginM, double depthM) {
    OptionalDouble depth =
        Double.isNaN(depthM) ? OptionalDouble.empty() : OptionalDouble.of(depthM);
    keepClears.add(new KeepClear(id, outline, marginM, "test", false, true, depth));
    return this;
  }

  public SiteBuilder machine(Machine some) {
    machine = some;
    return this;
  }

  public SiteBuilder spots(Spot... some) {
    spots.addAll(List.of(some));
    return this;
  }

  public Site build() {
    Deck deck =
        new Deck(
            "deck",
            Outline.box(9.9, 15.9, 20.1, 24.1),
            deckHeightM,
            deckAllowedKpa,
            floorOpenings,
            List.of(new Steps("steps", new Point(14.5, 15.0), new Point(14.5, 16.3), 1.0)),
            joists,
            deckTotalKg);
    return new Site(
        "test site",
        Outline.box(0, 0, 40, 28),
        90,
        0.15,
        walls,
        Stream.concat(Stream.of(deck), porches.stream()).toList(),
        yards,
        lanes,
        keepClears,
        List.of(new TruckStand("truck", new Footprint(new Point(18, 2), 0, 12, 2.6))),
        overheadLines,
        machine,
        spots);
  }
}
