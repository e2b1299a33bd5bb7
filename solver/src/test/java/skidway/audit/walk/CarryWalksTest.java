package skidway.audit.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.door;
import static skidway.testkit.SiteBuilder.wall;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import skidway.erection.PullOrder;
import skidway.plan.Task;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.site.WallOpening;
import skidway.testkit.BundleBuilder;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

final class CarryWalksTest {
  private static final double CLIMB_M = 4.4 * 0.6;

  private static double[] metres(SiteBuilder site, Point access, BundleBuilder pieces) {
    Task task = Tasks.task(site.build(), pieces.build());
    PullOrder order = PullOrder.of(task.site(), task.delivery().pieces());
    List<Integer> all = order.placements().stream().map(p -> order.indexOf(p.piece())).toList();
    return new CarryWalks(task, order).metres(access, all);
  }

  /** A low deck is stepped onto anywhere, so that only walls are in the way. */
  private static SiteBuilder flat() {
    return aSite().deckHeight(0.1);
  }

  @Property(seed = "20310505", tries = 40)
  void anOpenWayIsEstimatedToOneAndAHalfPercent(
      @ForAll @DoubleRange(min = 1, max = 39) double x,
      @ForAll @DoubleRange(min = 1, max = 8) double y) {
    double found = metres(flat(), new Point(x, y), aBundle("B1").piece("W1", 1, 1, 2))[0];
    double straight = new Point(x, y).distanceTo(new Point(11, 15.6)) + 4.4 * 0.1;
    assertThat(found).isCloseTo(straight, within(0.015 * straight + 0.05));
  }

  @Test
  void aLowWallIsSteppedOverAndARisenOneWalkedRound() {
    BundleBuilder bundle = aBundle("B1");
    for (int course = 1; course <= 4; course++) {
      bundle.piece("W1", course, 1, 10);
    }
    bundle.piece("W3", 5, 1, 10);
    // From (15, 18) to (15, 23.6), inside the north wall: straight while the wall at y = 20 is low.
    double[] low = metres(partition(), new Point(15, 18), aBundle("B1").piece("W3", 1, 1, 10));
    assertThat(low[0]).isCloseTo(5.6, within(0.1));
    // Once it has risen, people go round its end.
    double[] round = metres(partition(), new Point(15, 18), bundle);
    double roundM = Math.hypot(5, 1.9) + 0.2 + Math.hypot(5, 3.5);
    assertThat(round[4]).isCloseTo(roundM, within(0.04 * roundM));
    // Or through its door between x = 14 and x = 15.
    double[] throughDoor = metres(partition(door("D1", 4, 1)), new Point(15, 18), bundle);
    assertThat(throughDoor[4]).isCloseTo(5.6, within(0.2));
  }

  private static SiteBuilder partition(WallOpening... doors) {
    return flat()
        .walls(
            wall("W1", 10, 20, 20, 20, Starter.FULL, doors),
            wall("W3", 20, 24, 10, 24, Starter.FULL));
  }

  @Test
  void ontoAHighDeckTheWayLeadsOverItsSteps() {
    SiteBuilder oneWall = aSite().walls(wall("I1", 12, 20, 18, 20, Starter.FULL, door("D1", 4, 1)));
    // Foot at (14.5, 15), top at (14.5, 16.3), the piece's near face at (15, 19.6).
    double found = metres(oneWall, new Point(30, 10), aBundle("B1").piece("I1", 1, 1, 6))[0];
    double expected = Math.hypot(15.5, 5) + 1.3 + CLIMB_M + Math.hypot(0.5, 3.3);
    assertThat(found).isCloseTo(expected, within(0.04 * expected));
  }

  @Test
  void aPieceLaidFromTheGroundIsLiftedUpToTheDeck() {
    double found = metres(aSite(), new Point(15, 10), aBundle("B1").piece("W1", 1, 1, 10))[0];
    assertThat(found).isCloseTo(5.6 + CLIMB_M, within(0.1));
  }

  @Test
  void whereNobodyGetsThroughTheWayIsEndless() {
    SiteBuilder river = flat().keepClear("river", Outline.box(-1, 12, 41, 13), 0, false);
    double[] found = metres(river, new Point(15, 10), aBundle("B1").piece("W1", 1, 1, 10));
    assertThat(found).containsExactly(Double.POSITIVE_INFINITY);
  }

  @Test
  void theWayBackIsAsLong() {
    Site site = flat().keepClear("pond", Outline.box(12, 8, 18, 13), 0, false).build();
    ClosedWalls none = ClosedWalls.of(site, 9, w -> false);
    byte[] closed = new SiteObstacles(site, 9).draw(grid(site), 0, 0.11, none);
    WalkField field = new WalkField(grid(site), new Levels(site, 9), closed, none, List.of());
    Point a = new Point(15, 6);
    Point b = new Point(16, 15);
    assertThat(metres(field, b, a)).isCloseTo(metres(field, a, b), within(0.02));
  }

  private static double metres(WalkField field, Point from, Point to) {
    return field.metres(from, List.of(List.of(new LayingPoint(to, 0))))[0];
  }

  /** However early a flood stops, and however many there are at once. */
  @Test
  void manyPiecesAtOnceAreAsFarAsEachAlone() {
    BundleBuilder bundle = aBundle("B1");
    for (String wall : List.of("W1", "W3")) {
      for (int course = 1; course <= 5; course++) {
        bundle.piece(wall, course, 1, 4).piece(wall, course, 2, 6);
      }
    }
    Task task = Tasks.task(partition(door("D1", 4, 1)).build(), bundle.build());
    PullOrder order = PullOrder.of(task.site(), task.delivery().pieces());
    List<Integer> all = IntStream.range(0, order.placements().size()).boxed().toList();
    List<Point> from = List.of(new Point(15, 18), new Point(2, 2), new Point(15, 22));
    CarryWalks walks = new CarryWalks(task, order);
    List<double[]> together = from.parallelStream().map(p -> walks.metres(p, all)).toList();
    for (int i = 0; i < from.size(); i++) {
      Point p = from.get(i);
      double[] alone =
          all.stream()
              .mapToDouble(pull -> new CarryWalks(task, order).metres(p, List.of(pull))[0])
              .toArray();
      assertThat(together.get(i)).containsExactly(alone);
    }
  }

  private static WalkGrid grid(Site site) {
    return new WalkGrid(site.boundary(), 0.1);
  }
}
