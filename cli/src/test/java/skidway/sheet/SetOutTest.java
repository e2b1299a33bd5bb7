package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import skidway.job.JobReader;
import skidway.job.PlanFiles;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.rules.Settings;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.testkit.PlanBuilder;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;
import skidway.timber.Delivery;
import skidway.units.Figures;
import skidway.units.Quantities;
import skidway.units.UnitSystem;

/** Pulls the tapes again by what the sheet says, and looks where they meet. */
class SetOutTest {
  private static final double INCH_M = 0.0254;

  /** No wall stands yet. */
  private static final TapeSight OPEN = new TapeSight(List.of());

  private static final Pattern SIDE = Pattern.compile("left of (\\w+) to (\\w+)(,.*)?");
  private static final RunningHead HEAD = new RunningHead("test", 1, "");

  private static String sheet(Task task, Plan plan) {
    Markup page = new Markup();
    SetOutSection.write(page, task, plan, HEAD);
    return page.done();
  }

  private static List<List<String>> rows(String sheet, String kind) throws Exception {
    List<List<String>> rows = new ArrayList<>();
    for (Element row : SvgText.elements(SvgText.parse(sheet), "tr")) {
      if (row.getAttribute("class").equals(kind)) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getChildNodes().getLength(); i++) {
          cells.add(row.getChildNodes().item(i).getTextContent());
        }
        rows.add(cells);
      }
    }
    return rows;
  }

  /** Where a letter is, from the drawing the letters are told on. */
  private static Map<String, Point> letters(Task task, Plan plan) {
    Map<String, Point> letters = new TreeMap<>();
    SetOut.of(task, plan).references().forEach(r -> letters.put(r.name(), r.at()));
    return letters;
  }

  private static void everyCornerIsFoundAgain(Task task, Plan plan) throws Exception {
    List<Point> wanted = new ArrayList<>();
    plan.stacks().forEach(s -> wanted.addAll(SpotMarks.corners(s.spot())));
    plan.waitingPlaces().forEach(s -> wanted.addAll(SpotMarks.corners(s)));
    List<List<String>> rows = rows(sheet(task, plan), "spot-corner");
    assertThat(rows).hasSameSizeAs(wanted);
    Map<String, Point> letters = letters(task, plan);
    for (int i = 0; i < rows.size(); i++) {
      Point found = pulled(rows.get(i), letters, new Quantities(task.figures().units()));
      assertThat(found.distanceTo(wanted.get(i)))
          .as("%s at %s", rows.get(i), wanted.get(i))
          .isLessThan(task.figures().units() == UnitSystem.US ? INCH_M : 0.025);
    }
  }

  private static Point pulled(List<String> row, Map<String, Point> letters, Quantities units) {
    String[] first = row.get(1).split(" ", 2);
    String[] second = row.get(2).split(" ", 2);
    Matcher side = SIDE.matcher(row.get(3));
    assertThat(side.matches()).as(row.get(3)).isTrue();
    assertThat(List.of(side.group(1), side.group(2))).containsExactly(first[0], second[0]);
    Point a = letters.get(first[0]);
    Point b = letters.get(second[0]);
    double r1 = units.length(first[1]);
    double r2 = units.length(second[1]);
    double apart = a.distanceTo(b);
    double along = (apart * apart + r1 * r1 - r2 * r2) / (2 * apart);
    Point way = b.minus(a).times(1 / apart);
    double off = Math.sqrt(Math.max(0, r1 * r1 - along * along));
    return a.plus(way.times(along)).plus(way.turnedLeft().times(off));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cabin", "l-house"})
  void everyCornerOfTheDemosIsFoundAgain(String name) throws Exception {
    Path folder = Path.of("..", "demo-data", name);
    Task task = JobReader.read(folder).task();
    everyCornerIsFoundAgain(task, PlanFiles.read(folder.resolve("expected/plan.json"), task));
  }

  @Test
  void everyCornerOfTheSampleIsFoundAgain() throws Exception {
    everyCornerIsFoundAgain(SampleHouse.task(), SampleHouse.plan());
  }

  @Property(tries = 150, seed = "11")
  void everyCornerOfARandomSiteIsFoundAgain(@ForAll long seed) throws Exception {
    Random random = new Random(seed);
    Task task = task(randomSite(random), random.nextBoolean() ? UnitSystem.US : UnitSystem.METRIC);
    PlanBuilder plan = PlanBuilder.aPlan();
    for (int i = 0; i < 6; i++) {
      plan.stack(randomSpot("S" + i, random));
    }
    plan.waiting(randomSpot("W", random));
    everyCornerIsFoundAgain(task, plan.build(task));
  }

  private static Task task(Site site, UnitSystem units) {
    return new Task(
        "test job",
        site,
        new Delivery(List.of(), List.of()),
        Settings.defaults(),
        new Figures(units));
  }

  private static Site randomSite(Random random) {
    SiteBuilder site = SiteBuilder.aSite();
    if (random.nextBoolean()) {
      double x = 24 + 4 * random.nextDouble();
      site.porch("porch", Outline.box(x, 14, x + 1 + 3 * random.nextDouble(), 18));
    }
    Site built = site.build();
    return random.nextInt(3) > 0 ? built : withoutDecks(built, built.walls());
  }

  private static Site withoutDecks(Site site, List<Wall> walls) {
    return new Site(
        site.name(),
        site.boundary(),
        site.northDeg(),
        site.courseM(),
        walls,
        List.of(),
        site.yards(),
        site.lanes(),
        site.keepClears(),
        site.truckStands(),
        site.machine(),
        site.spots());
  }

  private static Spot randomSpot(String id, Random random) {
    Point centre = new Point(3 + 34 * random.nextDouble(), 3 + 22 * random.nextDouble());
    return new Spot(
        id,
        "yard",
        SpotKind.STACK,
        new Footprint(centre, 360 * random.nextDouble(), 1 + 3 * random.nextDouble(), 0.6),
        random.nextBoolean() ? OpenSide.LEFT : OpenSide.RIGHT,
        0.91,
        OptionalDouble.empty());
  }

  @Test
  void aHouseFarAwayIsHelpedByAStakeInLineWithIt() throws Exception {
    Site site = SiteBuilder.aSite().build();
    Task task = task(site, UnitSystem.METRIC);
    Plan plan =
        PlanBuilder.aPlan().stack(SiteBuilder.spot("far", "yard", 37, 2, 3, 0.6)).build(task);
    Point corner = SpotMarks.corners(plan.stacks().get(0).spot()).get(0);
    assertThat(TapeFix.best(corner, ReferenceCorners.of(site, OPEN), OPEN)).isEmpty();
    List<List<String>> stakes = rows(sheet(task, plan), "stake");
    assertThat(stakes).isNotEmpty();
    assertThat(stakes.get(0).get(1))
        .matches("stake in line with [A-D] and [A-D], \\d+\\.00 m beyond [A-D]");
    for (Reference r : SetOut.of(task, plan).references()) {
      assertThat(r.at().x()).isBetween(0.0, 40.0);
      assertThat(r.at().y()).isBetween(0.0, 28.0);
    }
    everyCornerIsFoundAgain(task, plan);
  }

  @Test
  void cornersAreNamedByTheWallsThatMeetThere() throws Exception {
    Task task = task(SiteBuilder.aSite().build(), UnitSystem.METRIC);
    Plan plan =
        PlanBuilder.aPlan().stack(SiteBuilder.spot("Y", "yard", 15, 12, 2, 0.6)).build(task);
    assertThat(rows(sheet(task, plan), "fixed"))
        .extracting(List::toString)
        .containsExactly(
            "[A, corner of deck where W1 and W4 meet, A to B: 10.20 m]",
            "[B, corner of deck where W1 and W2 meet, B to C: 8.20 m]",
            "[C, corner of deck where W2 and W3 meet, C to D: 10.20 m]",
            "[D, corner of deck where W3 and W4 meet, D to A: 8.20 m]");
    assertThat(rows(sheet(task, plan), "spot-corner").get(0).get(3))
        .isEqualTo("left of B to A, outside W1");
  }

  @Test
  void withoutADeckTheOuterCornersOfWallsAreTapedFrom() {
    Site site = SiteBuilder.aSite().build();
    List<Reference> corners = ReferenceCorners.of(withoutDecks(site, site.walls()), OPEN);
    assertThat(corners).hasSize(4);
    assertThat(corners.get(0).at().distanceTo(new Point(9.9, 15.9))).isLessThan(1e-9);
    assertThat(corners.get(2).at().distanceTo(new Point(20.1, 24.1))).isLessThan(1e-9);
    assertThat(corners.get(0).where()).isEqualTo("outer corner where W1 and W4 meet");
    Wall alone = SiteBuilder.wall("W9", 10, 10, 16, 10, Starter.FULL);
    assertThat(ReferenceCorners.of(withoutDecks(site, List.of(alone)), OPEN))
        .extracting(Reference::at)
        .containsExactly(new Point(10, 9.9), new Point(16, 9.9));
    assertThat(ReferenceCorners.of(withoutDecks(site, List.of()), OPEN)).isEmpty();
  }

  @Test
  void lettersGoOnAfterZ() {
    assertThat(Reference.letters(0)).isEqualTo("A");
    assertThat(Reference.letters(25)).isEqualTo("Z");
    assertThat(Reference.letters(26)).isEqualTo("AA");
    assertThat(Reference.letters(53)).isEqualTo("BB");
  }

  @Test
  void theOpenSideIsBetweenCornersOneAndTwo() {
    for (OpenSide side : OpenSide.values()) {
      Footprint area = new Footprint(new Point(0, 0), 30, 4, 1);
      Spot spot = new Spot("S", "yard", SpotKind.STACK, area, side, 0.9, OptionalDouble.empty());
      List<Point> corners = SpotMarks.corners(spot);
      Point middle = corners.get(0).plus(corners.get(1)).times(0.5);
      assertThat(middle.distanceTo(spot.towardsOpenSide().times(0.5))).isLessThan(1e-9);
    }
  }

  @Test
  void theCornersOfASpotAreTapedFromTheSameTwoLettersWhereTwoServeThemAll() throws Exception {
    Task task = task(SiteBuilder.aSite().build(), UnitSystem.METRIC);
    Plan plan =
        PlanBuilder.aPlan().stack(SiteBuilder.spot("Y", "yard", 15, 11, 3, 0.6)).build(task);
    assertThat(rows(sheet(task, plan), "spot-corner"))
        .extracting(row -> row.get(1).split(" ", 2)[0] + row.get(2).split(" ", 2)[0])
        .containsExactly("BA", "BA", "BA", "BA");
    for (Optional<TapeFix> fix : SetOut.of(task, plan).spots().get(0).fixes()) {
      assertThat(fix).hasValueSatisfying(f -> assertThat(f.good()).isTrue());
    }
  }

  @Test
  void noTapeIsPulledThroughAWallThatStands() throws Exception {
    Site site = SiteBuilder.aSite().builtWalls(2).build();
    Task task = task(site, UnitSystem.METRIC);
    Plan plan =
        PlanBuilder.aPlan()
            .stack(SiteBuilder.spot("D", "deck", 15, 20, 2, 0.6))
            .stack(SiteBuilder.spot("Y", "yard", 15, 11, 2, 0.6))
            .build(task);
    SetOut setOut = SetOut.of(task, plan);
    List<TapeFix> fixes =
        setOut.spots().stream().flatMap(s -> s.fixes().stream()).flatMap(Optional::stream).toList();
    assertThat(fixes).hasSize(8);
    for (TapeFix fix : fixes) {
      for (Reference from : List.of(fix.first(), fix.second())) {
        for (Wall wall : site.walls()) {
          assertThat(
                  Line2D.linesIntersect(
                      from.at().x(),
                      from.at().y(),
                      fix.corner().x(),
                      fix.corner().y(),
                      wall.start().x(),
                      wall.start().y(),
                      wall.end().x(),
                      wall.end().y()))
              .as("%s through %s", fix, wall.id())
              .isFalse();
        }
      }
    }
    assertThat(rows(sheet(task, plan), "fixed"))
        .extracting(row -> row.get(1))
        .contains("inner corner where W1 and W2 meet", "corner of deck where W1 and W4 meet");
    everyCornerIsFoundAgain(task, plan);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.45})
  void overALowWallTapesArePulled(double builtM) {
    Site site = SiteBuilder.aSite().builtWalls(builtM).build();
    assertThat(TapeSight.of(task(site, UnitSystem.METRIC)).standing()).isEmpty();
  }

  @Test
  void withoutAnythingToMeasureFromTheSheetSaysSo() {
    Site site = withoutDecks(SiteBuilder.aSite().build(), List.of());
    Task task = task(site, UnitSystem.METRIC);
    Plan plan = PlanBuilder.aPlan().stack(SiteBuilder.spot("Y", "yard", 15, 9, 2, 0.6)).build(task);
    assertThat(sheet(task, plan)).contains("No deck and no walls to measure from");
    assertThat(sheet(Tasks.task(site), plan)).doesNotContain("<table");
  }
}
