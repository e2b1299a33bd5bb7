package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.bound.Ground;
import skidway.bound.LowerBound;
import skidway.plan.Presence;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.testkit.RandomDelivery;
import skidway.testkit.SiteBuilder;

/** Every way to place five bundles is looked at: none may cost less than what is proven. */
class BoundGroundTest {
  private static final int BUNDLES = 5;
  private static final long STEPS = 8_000;

  /** The first two are in each other's way, the next two share what the deck bears. */
  private static final Spot[] SPOTS = {
    spot("A", "yard", 10, 8, 4.5, 1),
    spot("B", "yard", 11, 8.3, 4.5, 1),
    spot("D", "deck", 15, 18, 4.5, 1),
    spot("E", "deck", 15, 21.5, 4.5, 1),
    rack("R", "yard", 26, 8, 2, 1)
  };

  private static final int[][] EXCLUDES = {{1}, {0}, {}, {}, {}};

  private static SiteBuilder site(Random random) {
    Joists weak =
        new Joists(
            0,
            0.4,
            new Point(10, 16),
            List.of(new Point(9.9, 15.9), new Point(15, 20), new Point(20.1, 24.1)),
            new JoistDesign.LiveLoad(0.3 + random.nextDouble()));
    return aSite()
        .deckAllowed(2 + random.nextDouble())
        .deckTotal(200 + random.nextInt(300))
        .joists(weak)
        .spots(SPOTS);
  }

  private static Task fresh(Random random) {
    return task(site(random).build(), RandomDelivery.bundles(random, BUNDLES));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void onAnEmptySite(long seed) {
    Task task = fresh(new Random(seed));
    assertNothingIsCheaperThanProven(Boards.board(task, EXCLUDES, SPOTS));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void whenBundlesComeAfterOthersAreUsedUp(long seed) {
    Random random = new Random(seed);
    Task task = fresh(random);
    int pulled = 1 + random.nextInt(task.delivery().pieces().size());
    Presence presence = Presence.of(task, arrival -> pulled * arrival.getDayOfYear());
    assertNothingIsCheaperThanProven(Boards.board(task, presence, EXCLUDES, SPOTS));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void whenSomethingLiesThere(long seed) {
    Random random = new Random(seed);
    Task task = fresh(random);
    Set<String> fixed = random.nextInt(3) == 0 ? Set.of("B1") : Set.of();
    List<String> lying = random.nextBoolean() ? List.of("B1", "B2") : List.of("B2", "B1");
    Spot spot = SPOTS[random.nextInt(4)];
    Start start =
        new Start(List.of(new Stack(spot, lying)), Map.of(), List.of(spot), fixed, Set.of());
    assertNothingIsCheaperThanProven(Boards.board(task.startingFrom(start), EXCLUDES, SPOTS));
  }

  /** The first bundle is used up before the second comes; the first load's other one stays. */
  @Test
  void aBundleIsThereFromItsLoadToItsLastPiece() {
    Task task =
        task(
            aSite().spots(SPOTS).build(),
            aBundle("early").load("L1", 1).piece("W1", 1, 1, 3).build(),
            aBundle("lasting").load("L1", 2).piece("W1", 2, 1, 3).build(),
            aBundle("late").load("L2", 1).piece("W1", 3, 1, 3).build());
    Presence presence = Presence.of(task, arrival -> arrival.getDayOfYear() > 125 ? 1 : 0);
    BoundGround ground = new BoundGround(Boards.board(task, presence, EXCLUDES, SPOTS), false);
    assertThat(ground.there(0)).isEqualTo(0b01);
    assertThat(ground.there(1)).isEqualTo(0b11);
    assertThat(ground.there(2)).isEqualTo(0b10);
  }

  /** Two that take the whole height each and never meet, while others come and go. */
  @Test
  void whatIsNotThereWhenMostIsTakesNoRoomFromWhatCouldFollowIt() {
    Task task =
        task(
            aSite().spots(SPOTS).build(),
            aBundle("first").load("L1", 1).size(4, 0.9, 1.4).piece("W1", 1, 1, 3).build(),
            aBundle("second").load("L2", 1).piece("W1", 2, 1, 3).build(),
            aBundle("third").load("L2", 2).piece("W1", 3, 1, 3).build(),
            aBundle("last").load("L3", 1).size(4, 0.9, 1.4).piece("W1", 4, 1, 3).build());
    Presence presence = Presence.of(task, arrival -> arrival.getDayOfYear() > 126 ? 3 : 1);
    Board board = Boards.board(task, presence, EXCLUDES, SPOTS);
    assertThat(board.there).containsExactly(0b001, 0b010, 0b010, 0b100);
    BoundGround ground = new BoundGround(board, false);
    int[] both = {0, 3};
    assertThat(ground.stackMs(both, 2, 0)).isNotEqualTo(Ground.REFUSED);
    assertThat(ground.takes(0, 0) + ground.takes(3, 0)).isZero();
    assertThat(ground.takes(1, 0)).isEqualTo(board.tierM[1]);
  }

  /** Somebody may reckon with a week for every piece that is moved aside. */
  @Test
  void movingPiecesAsideMayTakeAnyTime() {
    Settings settings =
        Settings.defaults().with(Setting.REHANDLE_PIECE, 1e6, "as slow as it may be");
    Task task =
        task(
            aSite().spots(SPOTS).build(),
            settings,
            aBundle("early").load("L1", 1).piece("W1", 1, 1, 3).build(),
            aBundle("late")
                .load("L1", 2)
                .piece("W1", 2, 1, 3)
                .piece("W1", 3, 1, 3)
                .piece("W1", 4, 1, 3)
                .build());
    BoundGround ground = new BoundGround(Boards.board(task, EXCLUDES, SPOTS), false);
    assertThat(ground.onTopMs(0, 1, 0)).isEqualTo(Integer.MAX_VALUE);
  }

  private static void assertNothingIsCheaperThanProven(Board board) {
    int ways = board.spotCount() + 1;
    Occupancy occupancy = Boards.ground(board).empty();
    long cheapestMs = Long.MAX_VALUE;
    int fewestLeft = BUNDLES;
    for (int code = 0; code < Math.pow(ways, BUNDLES); code++) {
      occupancy.clear();
      for (int b = 0, rest = code; b < BUNDLES; b++, rest /= ways) {
        occupancy.put(b, rest % ways - 1);
      }
      if (occupancy.legal() && occupancy.unplaced() <= fewestLeft) {
        boolean fewer = occupancy.unplaced() < fewestLeft;
        cheapestMs = fewer ? occupancy.costMs() : Math.min(cheapestMs, occupancy.costMs());
        fewestLeft = occupancy.unplaced();
      }
    }
    BoundGround ground = new BoundGround(board, occupancy.isTolerant());
    assertNoSetCostsLessOrTakesMoreThanIsTold(ground);
    LowerBound bound = new LowerBound(ground, board.moments, fewestLeft);
    bound.raise(3 * cheapestMs, STEPS, () -> false);
    assertThat(bound.provenMs()).isPositive().isLessThanOrEqualTo(cheapestMs);
    if (fewestLeft == 0) {
      Tribunal tribunal =
          new Tribunal(occupancy, Boards.ground(board), plan -> List.of(), plan -> true);
      bound.gather(cheapestMs + 1, 1_000_000, () -> false);
      bound.close(cheapestMs + 1, 1_000_000, () -> false, tribunal);
      assertThat(bound.provenMs()).isEqualTo(cheapestMs);
      assertThat(tribunal.best().costMs()).isEqualTo(cheapestMs);
    }
  }

  private static void assertNoSetCostsLessOrTakesMoreThanIsTold(BoundGround ground) {
    for (int spot = 0; spot < ground.spots(); spot++) {
      for (int bits = 1; bits < 1 << BUNDLES; bits++) {
        int members = bits;
        int[] set = IntStream.range(0, BUNDLES).filter(b -> (members >> b & 1) == 1).toArray();
        int s = spot;
        if (ground.mayGrow(set, set.length, spot)
            && ground.stackMs(set, set.length, spot) != Ground.REFUSED) {
          long least = Arrays.stream(set).mapToLong(b -> ground.leastInStackMs(b, s)).sum();
          long together = inLeastOrderMs(ground, spot, bits);
          assertThat(together).isNotEqualTo(Ground.REFUSED);
          assertThat(ground.stackMs(set, set.length, spot))
              .isGreaterThanOrEqualTo(least + together);
          assertThat(Arrays.stream(set).mapToDouble(b -> ground.takes(b, s)).sum())
              .isLessThanOrEqualTo(ground.room(spot) + 1e-9);
        }
      }
    }
  }

  /** By trying every bundle of a set on top of the others. */
  private static long inLeastOrderMs(BoundGround ground, int spot, int set) {
    long least = set == 0 ? 0 : Ground.REFUSED;
    for (int top = 0; top < BUNDLES; top++) {
      int below = set & ~(1 << top);
      long beneath = below == set ? Ground.REFUSED : inLeastOrderMs(ground, spot, below);
      if (beneath == Ground.REFUSED) {
        continue;
      }
      int upper = top;
      long[] onTop =
          IntStream.range(0, BUNDLES)
              .filter(b -> (below >> b & 1) == 1)
              .mapToLong(b -> ground.onTopMs(b, upper, spot))
              .toArray();
      if (Arrays.stream(onTop).noneMatch(ms -> ms == Ground.REFUSED)) {
        long all = beneath + Arrays.stream(onTop).max().orElse(0);
        least = least == Ground.REFUSED ? all : Math.min(least, all);
      }
    }
    return least;
  }
}
