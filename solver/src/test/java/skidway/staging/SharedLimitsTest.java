package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.testkit.RandomDelivery;
import skidway.testkit.SiteBuilder;
import skidway.timber.Bundle;

class SharedLimitsTest {
  /** Joists along y every 0.4 m on supports at y = 16, 20 and 24, designed for 2.4 kPa. */
  private static final Joists JOISTS =
      new Joists(
          90,
          0.4,
          new Point(10, 16),
          List.of(new Point(10, 16), new Point(10, 20), new Point(10, 24)),
          new JoistDesign.LiveLoad(2.4));

  private static Site site(OptionalDouble totalKg) {
    Site plain = SiteBuilder.aSite().build();
    Deck deck =
        new Deck(
            "deck",
            Outline.box(9.9, 15.9, 20.1, 24.1),
            0.6,
            50,
            List.of(),
            List.of(),
            Optional.of(JOISTS),
            totalKg);
    return new Site(
        plain.name(),
        plain.boundary(),
        plain.northDeg(),
        plain.courseM(),
        plain.walls(),
        List.of(deck),
        plain.yards(),
        plain.lanes(),
        plain.keepClears(),
        plain.truckStands(),
        plain.machine(),
        List.of());
  }

  private static Spot along(String id, double x, double y) {
    Spot across = spot(id, "deck", x, y, 4, 1);
    return new Spot(
        id,
        "deck",
        across.kind(),
        new Footprint(new Point(x, y), 90, 4, 1),
        across.openSide(),
        across.stripM(),
        across.massLimitKg());
  }

  /** The sum of both is above the limit, the moment of both together is not: both may stay. */
  @Test
  void aBoundThatIsTooHighRefusesNothing() {
    Bundle first = heavy("B1", 1);
    Bundle second = heavy("B2", 2);
    Task task = task(site(OptionalDouble.empty()), first, second);
    Board board = Boards.board(task, along("A", 14.1, 16.8), along("B", 14.1, 19.2));
    Occupancy occupancy = Boards.ground(board).empty();
    occupancy.put(0, 0);
    occupancy.put(1, 1);
    SharedLimits.Share one = board.share(0, 0);
    SharedLimits.Share other = board.share(1, 1);
    double sumNm = 280 * (peak(board, one) + peak(board, other));
    assertThat(sumNm).isGreaterThan(2400 * 0.4 * 16 / 8);
    assertThat(occupancy.legal()).isTrue();
  }

  private static Bundle heavy(String id, int off) {
    return aBundle(id)
        .load("L1", off)
        .size(1, 0.6, 0.4)
        .weighing(280)
        .piece("W1", off, 1, 0.9)
        .build();
  }

  private static double peak(Board board, SharedLimits.Share share) {
    double peak = 0;
    for (int i = 0; i < share.limits.length; i++) {
      if (board.shared.rule(share.limits[i]) == Rule.JOIST_BENDING) {
        peak = Math.max(peak, share.perKg[i]);
      }
    }
    return peak;
  }

  @Test
  void stacksOnTheSameJoistsAddUp() {
    Bundle first = aBundle("B1").weighing(500).piece("W1", 1, 1, 2).build();
    Bundle second = aBundle("B2").weighing(500).piece("W1", 2, 1, 2).build();
    Task task = task(site(OptionalDouble.empty()), first, second);
    Board board =
        Boards.board(task, spot("A", "deck", 14, 17.6, 5, 1), spot("B", "deck", 14, 18.4, 5, 1));
    Occupancy occupancy = Boards.ground(board).empty();
    double alone = heaviestAlone(task, board.spots.get(0));
    assertThat(alone).isBetween(500.0, 1000.0);
    occupancy.put(0, 0);
    assertThat(occupancy.legal()).isTrue();
    occupancy.put(1, 1);
    assertThat(occupancy.legal()).isFalse();
    assertThat(occupancy.overloadedRule()).isIn(Rule.JOIST_BENDING, Rule.JOIST_SHEAR);
    occupancy.take(0);
    assertThat(occupancy.legal()).isTrue();
  }

  /** Most a stack on a 4 m bundle may weigh at a spot before a joist has enough, kg. */
  private static double heaviestAlone(Task task, Spot spot) {
    SharedLimits shared = new SharedLimits(task, new Footings(task));
    SharedLimits.Share share = shared.share(spot, task.delivery().bundles().get(0));
    double mostKg = Double.POSITIVE_INFINITY;
    for (int i = 0; i < share.limits.length; i++) {
      mostKg = Math.min(mostKg, shared.most(share.limits[i]) / share.perKg[i]);
    }
    return mostKg;
  }

  @Test
  void bearersAcrossTheJoistsBearMoreThanBearersAlongThem() {
    Task task = task(site(OptionalDouble.empty()), aBundle("B1").weighing(500).build());
    double bearersAcross = heaviestAlone(task, along("A", 14.1, 20));
    double bearersAlong = heaviestAlone(task, spot("B", "deck", 14.1, 18, 4, 1));
    assertThat(bearersAcross).isGreaterThan(bearersAlong);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1000, 999})
  void aZoneCarriesNoMoreThanItsTotal(double totalKg) {
    Bundle first = aBundle("B1").weighing(500).piece("W1", 1, 1, 2).build();
    Bundle second = aBundle("B2").weighing(500).piece("W1", 2, 1, 2).build();
    Board board =
        Boards.board(
            task(site(OptionalDouble.of(totalKg)), first, second),
            along("A", 12, 20),
            along("B", 17, 20));
    Occupancy occupancy = Boards.ground(board).empty();
    occupancy.put(0, 0);
    occupancy.put(1, 1);
    assertThat(occupancy.legal()).isEqualTo(totalKg == 1000);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whatIsKeptUpToDateEqualsWhatIsCountedAfresh(long seed) {
    Board board =
        Boards.board(
            task(site(OptionalDouble.of(400)), RandomDelivery.bundles(new Random(seed), 10)),
            along("A", 12, 20),
            along("B", 13, 20),
            spot("C", "deck", 16, 18, 4, 1));
    Occupancy kept = Boards.ground(board).empty();
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      int bundle = random.nextInt(10);
      kept.take(bundle);
      kept.put(bundle, random.nextInt(4) - 1);
      Occupancy fresh = Boards.ground(board).empty();
      fresh.restore(kept.snapshot());
      assertThat(kept.brokenRules()).isEqualTo(fresh.brokenRules());
      assertThat(kept.costMs()).isEqualTo(fresh.costMs());
    }
  }
}
