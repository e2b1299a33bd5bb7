package skidway.audit.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.wall;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.geometry.Walker;
import skidway.geometry.WalkingDistances;
import skidway.job.JobReader;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Starter;
import skidway.site.WallOpening;
import skidway.testkit.BundleBuilder;
import skidway.testkit.Tasks;

/** The audit's grid and the exact walks that plans are made with check each other here. */
final class CarryAgainstExactWalksTest {
  private static final double CELLS_M = 0.2;
  private static final double FOOT_M = 0.3048;

  @Property(seed = "20310505", tries = 10)
  void bothFindTheSameWalksWithinTheStatedError(
      @ForAll @DoubleRange(min = 1, max = 39) double x,
      @ForAll @DoubleRange(min = 4, max = 11) double y,
      @ForAll @DoubleRange(min = 3, max = 25) double trenchX,
      @ForAll @DoubleRange(min = 0.4, max = 1.2) double deckHeightM) {
    Task task =
        Tasks.task(
            aSite()
                .deckHeight(deckHeightM)
                .keepClear("trench", Outline.box(trenchX, 12.5, trenchX + 12, 13.1), 0.6, false)
                .floorOpening("stair", Outline.box(13, 19, 14.5, 22))
                .build(),
            everyWall().build());
    checkAlike(task, new Point(x, y), placement -> true);
  }

  /** Checks the walks to some pieces and gives the exact ones. */
  private static List<Double> checkAlike(Task task, Point access, Predicate<Placement> wanted) {
    PullOrder order = PullOrder.of(task.site(), task.delivery().pieces());
    Walker walker = new Walker(Setting.STEP_OVER.defaultSi(), Setting.CLIMB_FACTOR.defaultSi());
    double[] exact = WalkingDistances.between(task.site(), walker, List.of(access), order)[0];
    List<Integer> some =
        IntStream.range(0, exact.length)
            .filter(i -> wanted.test(order.placements().get(i)))
            .boxed()
            .toList();
    double[] found = new CarryWalks(task, order).metres(access, some);
    for (int i = 0; i < found.length; i++) {
      double expected = exact[some.get(i)];
      String what = order.placements().get(some.get(i)).piece().mark() + " from " + access;
      if (Double.isInfinite(expected)) {
        assertThat(found[i]).as(what).isInfinite();
      } else {
        double allowed = CarryWalks.ERROR_SHARE * expected + CELLS_M;
        assertThat(found[i]).as(what).isCloseTo(expected, within(allowed));
      }
    }
    return some.stream().map(i -> exact[i]).toList();
  }

  @Test
  void bothFindNoWayInOverStepsThatRunThroughASolidWall() {
    // The steps run through the south wall at x = 14.5; a partition inside comes last.
    Predicate<Placement> last = p -> p.wall().id().equals("I1") && p.piece().course() == 5;
    Point yard = new Point(15, 10);
    assertThat(checkAlike(withPartition(4, 0), yard, last)).allMatch(Double::isFinite);
    assertThat(checkAlike(withPartition(7, 0), yard, last)).containsOnly(Double.POSITIVE_INFINITY);
  }

  @Test
  void bothFindNoWayThroughADoorWithAHighSill() {
    Predicate<Placement> last = p -> p.wall().id().equals("I1") && p.piece().course() == 5;
    Point yard = new Point(15, 10);
    assertThat(checkAlike(withPartition(4, 0.4), yard, last)).allMatch(Double::isFinite);
    assertThat(checkAlike(withPartition(4, 0.5), yard, last))
        .containsOnly(Double.POSITIVE_INFINITY);
  }

  @Test
  void bothStandNearerToTheWallWhereAFloorOpeningIsInTheWay() {
    // W4's inner face lies at x = 10.1. Round the opening's corners to its west side, twice.
    Task near = westPiece(0.2);
    assertThat(checkAlike(near, new Point(15, 20), p -> true).get(0))
        .isCloseTo(Math.hypot(2, 2) + 2.7 + 2, within(0.001));
    // With no room at all on that side the piece is laid from outside, 0.3 m off the face.
    Task none = westPiece(0.04);
    assertThat(checkAlike(none, new Point(15, 20), p -> true).get(0))
        .isCloseTo(Math.hypot(2, 2) + 2.86 + Math.hypot(2, 0.54) + 4.4 * 0.1, within(0.001));
  }

  private static Task westPiece(double openingOffFaceM) {
    return Tasks.task(
        aSite()
            .deckHeight(0.1)
            .floorOpening("stair", Outline.box(10.1 + openingOffFaceM, 18, 13, 22))
            .build(),
        aBundle("B1").piece("W4", 1, 1, 8).build());
  }

  @Test
  void bothFindTheSameWalksBesideTheStairOfTheLHouse() {
    Task task = JobReader.read(Path.of("..", "demo-data", "l-house")).task();
    Predicate<Placement> besideTheStair =
        p -> p.wall().id().equals("W6") && Math.abs(p.middle().y() / FOOT_M - 49) < 5;
    Point onDeck = new Point(45 * FOOT_M, 40 * FOOT_M);
    Point inYard = new Point(20 * FOOT_M, 40 * FOOT_M);
    assertThat(checkAlike(task, onDeck, besideTheStair)).hasSizeGreaterThan(10);
    assertThat(checkAlike(task, inYard, besideTheStair)).allMatch(Double::isFinite);
  }

  private static Task withPartition(double doorFromM, double sillM) {
    WallOpening door = new WallOpening("D1", doorFromM, 1, sillM, 2.1, true);
    BundleBuilder bundle = everyWall();
    for (int course = 1; course <= 5; course++) {
      bundle.piece("I1", course, 1, 4);
    }
    return Tasks.task(
        aSite()
            .walls(
                wall("W1", 10, 16, 20, 16, Starter.FULL, door),
                wall("W2", 20, 16, 20, 24, Starter.FULL),
                wall("W3", 20, 24, 10, 24, Starter.FULL),
                wall("W4", 10, 24, 10, 16, Starter.FULL),
                wall("I1", 13, 20, 17, 20, Starter.FULL))
            .build(),
        bundle.build());
  }

  private static BundleBuilder everyWall() {
    BundleBuilder bundle = aBundle("B1");
    for (int course = 1; course <= 5; course++) {
      bundle.piece("W1", course, 1, 4).piece("W1", course, 2, 5);
      bundle.piece("W2", course, 1, 4).piece("W2", course, 2, 4);
      bundle.piece("W3", course, 1, 5).piece("W3", course, 2, 5);
      bundle.piece("W4", course, 1, 4).piece("W4", course, 2, 4);
    }
    return bundle;
  }
}
