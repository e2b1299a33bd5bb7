package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Task;
import skidway.site.Outline;
import skidway.site.Spot;
import skidway.site.Yard;

/**
 * The crew put A and B down too near each other, on spots Y1 and Y2; C is still to come, and Y3 and
 * Y4 are too near each other too. A yard bears a ton in all.
 */
class ForgivenTest {
  private static final int B = 1;
  private static final int C = 2;
  private static final int[][] TOO_NEAR = {{1}, {0}, {3}, {2}, {}};

  private final Spot y1 = spot("Y1", "yard", 8, 9, 4.5, 1);
  private final Spot y2 = spot("Y2", "yard", 8, 10, 4.5, 1);
  private final Yard yard =
      new Yard(
          "yard",
          Outline.box(5, 6, 30, 12),
          45.9,
          "",
          OptionalDouble.empty(),
          OptionalDouble.of(1000));

  private Occupancy asItLies(double eachKg) {
    Task empty =
        task(
            aSite().yards(yard).build(),
            aBundle("A").load("L1", 1).weighing(eachKg).piece("W1", 1, 1, 3).build(),
            aBundle("B").load("L1", 2).weighing(eachKg).piece("W1", 2, 1, 3).build(),
            aBundle("C").load("L2", 1).weighing(eachKg).piece("W1", 3, 1, 3).build());
    Start start =
        new Start(
            List.of(new Stack(y1, List.of("A")), new Stack(y2, List.of("B"))),
            Map.of(),
            List.of(),
            Set.of(),
            Set.of());
    Board board =
        Boards.board(
            empty.startingFrom(start),
            TOO_NEAR,
            y1,
            y2,
            spot("Y3", "yard", 16, 9, 4.5, 1),
            spot("Y4", "yard", 16, 10, 4.5, 1),
            spot("Y5", "yard", 22, 9, 4.5, 1));
    Occupancy occupancy = Boards.ground(board).empty();
    occupancy.layStart();
    return occupancy;
  }

  private static void move(Occupancy occupancy, int bundle, int spot) {
    occupancy.take(bundle);
    occupancy.put(bundle, spot);
  }

  @Test
  void whatWasTooNearMayStayAndTheRestIsPlannedBesideIt() {
    Occupancy occupancy = asItLies(100);
    assertThat(occupancy.brokenRules()).isEqualTo(1);
    assertThat(occupancy.isTolerant()).isTrue();
    assertThat(occupancy.legal()).isTrue();
    occupancy.put(C, 2);
    assertThat(occupancy.legal()).isTrue();
  }

  @Test
  void oneFaultMendedIsNoLeaveForAnother() {
    Occupancy occupancy = asItLies(100);
    move(occupancy, B, 2);
    assertThat(occupancy.brokenRules()).isZero();
    assertThat(occupancy.legal()).isTrue();
    occupancy.put(C, 3);
    assertThat(occupancy.brokenRules()).isEqualTo(1);
    assertThat(occupancy.legal()).isFalse();
  }

  @Test
  void whatIsPutWhereTheOtherLayIsTooNearAnew() {
    Occupancy occupancy = asItLies(100);
    move(occupancy, B, 4);
    assertThat(occupancy.legal()).isTrue();
    occupancy.put(C, 1);
    assertThat(occupancy.brokenRules()).isEqualTo(1);
    assertThat(occupancy.legal()).isFalse();
  }

  @Test
  void whatBearsTooMuchMayGoOnBearingItButNotMore() {
    Occupancy occupancy = asItLies(600);
    move(occupancy, B, 4);
    assertThat(occupancy.overloaded()).isTrue();
    assertThat(occupancy.legal()).isTrue();
    occupancy.put(C, 2);
    assertThat(occupancy.legal()).isFalse();
  }
}
