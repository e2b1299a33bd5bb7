package skidway.audit.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.door;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.SiteBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Footprint;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Starter;
import skidway.site.WallOpening;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

final class PathFloodTest {
  private static final double WIDTH_M = Setting.WALK_WIDTH.defaultSi();

  private static Task task(SiteBuilder site) {
    return Tasks.task(site.build());
  }

  private static List<List<String>> shutBy(SiteBuilder site, Spot... used) {
    return new PathFlood(task(site)).shutBy(List.of(used));
  }

  /** A hedge across the site with one gap of a width at x, through which everybody has to go. */
  private static SiteBuilder hedge(double gapFromX, double gapM) {
    return aSite()
        .keepClear("west", Outline.box(-1, 12.5, gapFromX, 13), 0, false)
        .keepClear("east", Outline.box(gapFromX + gapM, 12.5, 41, 13), 0, false);
  }

  @Test
  void anEmptySiteIsOpen() {
    PathFlood flood = new PathFlood(task(aSite()));
    assertThat(flood.hasStart()).isTrue();
    assertThat(flood.shutOnEmptySite(List.of())).isEmpty();
    assertThat(flood.shutBy(List.of())).isEmpty();
    assertThat(flood.isCoarse()).isFalse();
  }

  @Property(seed = "20310505", tries = 40)
  void aGapAsWideAsPeopleNeedIsOpenWhereverItLies(
      @ForAll @DoubleRange(min = 2, max = 36) double x) {
    PathFlood flood = new PathFlood(task(hedge(x, WIDTH_M)));
    assertThat(flood.shutOnEmptySite(List.of())).isEmpty();
  }

  @Property(seed = "20310505", tries = 40)
  void aGapNarrowerByATenthIsShutWhereverItLies(@ForAll @DoubleRange(min = 2, max = 36) double x) {
    PathFlood flood = new PathFlood(task(hedge(x, 0.9 * WIDTH_M)));
    assertThat(flood.shutOnEmptySite(List.of())).hasSize(4);
  }

  @Property(seed = "20310505", tries = 30)
  void aStraightWayBetweenStacksIsJudgedAlikeInAnyDirection(
      @ForAll @DoubleRange(min = 0, max = 180) double heading,
      @ForAll @DoubleRange(min = 29, max = 30) double x) {
    assertThat(walksThrough(heading, x, WIDTH_M)).isTrue();
    assertThat(walksThrough(heading, x, 0.9 * WIDTH_M)).isFalse();
  }

  /** Whether one gets out of the middle of two long stacks that two others cap but for a gap. */
  private static boolean walksThrough(double heading, double x, double gapM) {
    Point centre = new Point(x, 14);
    Point along = Point.unit(heading);
    Point left = along.turnedLeft();
    double off = (gapM + 1) / 2;
    Footprint one = new Footprint(centre.plus(left.times(off)), heading, 8, 1);
    Footprint other = new Footprint(centre.minus(left.times(off)), heading, 8, 1);
    Footprint cap = new Footprint(centre.plus(along.times(4.5)), heading, 1, 4);
    WalkGrid grid = new WalkGrid(Outline.box(0, 0, 40, 28), WIDTH_M / 12);
    byte[] marks = grid.allMarked((byte) 0);
    double grownM = WIDTH_M / 2 - WIDTH_M / 24;
    for (Footprint f : List.of(one, other, cap)) {
      grid.markNear(marks, Flood.STACK, f, grownM);
    }
    // The grid's rim is closed on every real site.
    Site bare = aSite().walls().build();
    ClosedWalls none = ClosedWalls.of(bare, 1, w -> true);
    byte[] site = new SiteObstacles(bare, 1).draw(grid, grownM, 0, none);
    for (int i = 0; i < marks.length; i++) {
      marks[i] |= site[i];
    }
    grid.near(new Point(2, 14), 0.5, p -> true).addMark(marks, Flood.START);
    Cells inside = grid.near(centre, WIDTH_M / 4, p -> true);
    return new Flood(grid, List.of()).meetsStart(marks, inside);
  }

  @Test
  void aStackInTheGapOfAHedgeShutsWhatIsBehind() {
    assertThat(shutBy(hedge(14, 2), spot("Y1", "yard", 15, 12.75, 1.9, 0.5)))
        .containsExactly(List.of("Y1"));
    assertThat(shutBy(hedge(14, 2), spot("Y1", "yard", 15, 9, 1.9, 0.5))).isEmpty();
  }

  @Test
  void onlyTheStacksThatShutAPlaceTogetherAreNamed() {
    Spot west = spot("Y1", "yard", 14.5, 12.75, 0.9, 0.5);
    Spot east = spot("Y2", "yard", 15.5, 12.75, 0.9, 0.5);
    Spot bystander = spot("Y3", "yard", 9, 9, 4, 0.9);
    Spot behind = spot("Y4", "yard", 25, 20, 4, 0.9);
    assertThat(shutBy(hedge(14, 2), bystander, west, behind, east))
        .containsExactly(List.of("Y1", "Y2"));
    assertThat(shutBy(hedge(14, 2), bystander, west, behind)).isEmpty();
  }

  @Test
  void aStackAtTheFootOfTheOnlyStepsShutsTheDeck() {
    Spot onFoot = spot("Y1", "yard", 14.5, 14.7, 3, 1.4);
    Spot onDeck = spot("D1", "deck", 15, 19.5, 4, 0.9);
    PathFlood flood = new PathFlood(task(aSite()));
    assertThat(flood.shut(List.of(onFoot, onDeck)))
        .extracting(ShutPath::name)
        .contains(
            "the open side of D1",
            "door D1 in wall W1 from inside",
            "the foot of steps steps",
            "the top of steps steps");
    assertThat(flood.shutBy(List.of(onFoot, onDeck))).containsExactly(List.of("Y1"));
  }

  @Test
  void whatTheSiteItselfShutsIsNoStacksFault() {
    SiteBuilder walledIn =
        aSite()
            .walls(
                wall("W1", 10, 16, 20, 16, Starter.FULL, door("D1", 4, 1.0)),
                wall("C1", 30, 20, 34, 20, Starter.FULL),
                wall("C2", 34, 20, 34, 24, Starter.FULL),
                wall("C3", 34, 24, 30, 24, Starter.FULL),
                wall("C4", 30, 24, 30, 20, Starter.FULL));
    Spot cell = spot("Y1", "yard", 32, 22, 1, 0.5);
    PathFlood flood = new PathFlood(task(walledIn));
    assertThat(flood.shutOnEmptySite(List.of(cell))).containsExactly("the open side of Y1");
    assertThat(flood.shutBy(List.of(cell))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.8, 1.2})
  void aDoorIsTheWayThroughARisenWall(double doorM) {
    Site site =
        aSite()
            .walls(wall("W1", 0, 14, 40, 14, Starter.FULL, door("D1", 30, doorM)))
            .deckHeight(0.3)
            .build();
    PathFlood flood = new PathFlood(Tasks.task(site));
    assertThat(flood.shutOnEmptySite(List.of())).isEmpty();
    assertThat(flood.shutBy(List.of(spot("Y1", "yard", 30.5, 13.2, 2, 0.5)))).isNotEmpty();
  }

  @Test
  void aDoorWithASillTooHighToStepOverIsNoWayThrough() {
    double stepOverM = Setting.STEP_OVER.defaultSi();
    assertThat(shutBehindADoor(stepOverM)).isEmpty();
    assertThat(shutBehindADoor(stepOverM + 0.01)).contains("door D1 in wall W1 from inside");
  }

  private static List<String> shutBehindADoor(double sillM) {
    WallOpening hatch = new WallOpening("D1", 30, 1.2, sillM, 2.1, true);
    SiteBuilder site =
        aSite().walls(wall("W1", 0, 14, 40, 14, Starter.FULL, hatch)).deckHeight(0.3);
    return new PathFlood(task(site)).shutOnEmptySite(List.of());
  }

  @Test
  void stepsThroughASolidWallAreNoWayIn() {
    // The steps run through the south wall at x = 14.5.
    assertThat(shutWithTheDoorFrom(4)).isEmpty();
    assertThat(shutWithTheDoorFrom(7)).contains("the top of steps steps");
  }

  private static List<String> shutWithTheDoorFrom(double fromM) {
    SiteBuilder site =
        aSite()
            .walls(
                wall("W1", 10, 16, 20, 16, Starter.FULL, door("D1", fromM, 1)),
                wall("W2", 20, 16, 20, 24, Starter.HALF),
                wall("W3", 20, 24, 10, 24, Starter.FULL),
                wall("W4", 10, 24, 10, 16, Starter.HALF));
    return new PathFlood(task(site)).shutOnEmptySite(List.of());
  }

  @Test
  void withoutATruckStandNobodyStarts() {
    Site site = aSite().build();
    Site noTruck =
        new Site(
            site.name(),
            site.boundary(),
            site.northDeg(),
            site.courseM(),
            site.walls(),
            site.decks(),
            site.yards(),
            site.lanes(),
            site.keepClears(),
            List.of(),
            site.machine(),
            List.of());
    assertThat(new PathFlood(Tasks.task(noTruck)).hasStart()).isFalse();
  }

  @Property(seed = "20310505", tries = 25)
  void takingAnyOfTheNamedStacksAwayOpensTheWay(
      @ForAll @Size(min = 6, max = 14) List<@DoubleRange(min = 0.5, max = 27.5) Double> ys,
      @ForAll @DoubleRange(min = 24, max = 38) double x) {
    List<Spot> used = new ArrayList<>();
    for (double y : ys) {
      used.add(spot("S" + used.size(), "yard", x - used.size() % 3, y, 3.2, 0.9));
    }
    PathFlood flood = new PathFlood(task(aSite()));
    for (ShutPath path : flood.shut(used)) {
      List<Spot> named = used.stream().filter(s -> path.spotIds().contains(s.id())).toList();
      List<String> shutByNamed =
          flood.shut(withOpenSideOf(named, path, used)).stream().map(ShutPath::name).toList();
      assertThat(named).isNotEmpty();
      assertThat(shutByNamed).contains(path.name());
    }
  }

  /** The open side that is shut must belong to a used spot to be asked for at all. */
  private static List<Spot> withOpenSideOf(List<Spot> named, ShutPath path, List<Spot> used) {
    List<Spot> spots = new ArrayList<>(named);
    used.stream().filter(s -> s.id().equals(path.id()) && !named.contains(s)).forEach(spots::add);
    return spots;
  }
}
