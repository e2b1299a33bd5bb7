package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.limits.Bearers;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Machine;
import skidway.site.Outline;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.testkit.BundleBuilder;
import skidway.testkit.RandomDelivery;
import skidway.timber.Bundle;

class StackEvaluatorTest {
  private static final Spot SPOT = spot("S", "yard", 15, 8, 5, 1);

  /** What is needed first would lie on top, if it could be set down first. */
  @Test
  void whereNoMachineUnloadsABundleComesOnlyOnWhatCameOffBefore() {
    Bundle first = aBundle("first").load("L1", 1).piece("W1", 1, 1, 3).build();
    BundleBuilder later = aBundle("second").load("L1", 2);
    for (int course = 2; course < 10; course++) {
      later.piece("W1", course, 1, 3);
    }
    Board board =
        Boards.board(task(aSite().machine(Machine.NONE).build(), first, later.build()), SPOT);
    StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
    assertThat(evaluator.best(new int[] {0, 1}, 2, 0).order()).containsExactly(0, 1);
    assertThat(evaluator.inOrder(new int[] {1, 0}, 2, 0).legal()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noOrderIsCheaperThanTheBestOne(long seed) {
    Random random = new Random(seed);
    Board board = Boards.board(task(aSite().build(), RandomDelivery.bundles(random, 12)), SPOT);
    StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
    for (int round = 0; round < 30; round++) {
      int[] set = random.ints(0, 12).distinct().limit(2 + random.nextInt(4)).sorted().toArray();
      StackCost best = evaluator.best(set, set.length, 0);
      long cheapest = Long.MAX_VALUE;
      for (List<Integer> order : Boards.orders(IntStream.of(set).boxed().toList())) {
        int[] row = order.stream().mapToInt(Integer::intValue).toArray();
        StackCost cost = evaluator.inOrder(row, row.length, 0);
        cheapest = cost.legal() ? Math.min(cheapest, cost.totalMs()) : cheapest;
      }
      assertThat(best.legal()).isEqualTo(cheapest != Long.MAX_VALUE);
      if (best.legal()) {
        assertThat(best.totalMs()).isEqualTo(cheapest);
      }
    }
  }

  @Test
  void piecesNeededLaterThanWhatLiesBeneathAreRehandled() {
    Bundle early = aBundle("early").load("L1", 1).piece("W1", 1, 1, 3).build();
    Bundle mixed = aBundle("mixed").load("L1", 2).piece("W1", 2, 1, 3).piece("W1", 3, 1, 3).build();
    Board board = Boards.board(task(aSite().build(), early, mixed), SPOT);
    StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
    assertThat(evaluator.inOrder(new int[] {0, 1}, 2, 0).rehandleMs())
        .isEqualTo(2 * board.time.rehandleMs(1));
    assertThat(evaluator.inOrder(new int[] {1, 0}, 2, 0).rehandleMs()).isZero();
  }

  @Test
  void whatItsOwnLayersMoveAsideIsNotRehandledAgain() {
    Bundle early = aBundle("early").load("L1", 1).piece("W1", 1, 1, 3).build();
    Bundle mixed =
        aBundle("mixed")
            .load("L1", 2)
            .piece("W1", 2, 1, 3, 1)
            .piece("W3", 2, 1, 3, 2)
            .piece("W1", 3, 1, 3, 2)
            .build();
    Spot rack = rack("R", "yard", 15, 4, 3.2, 1);
    Board board = Boards.board(task(aSite().build(), early, mixed), SPOT, rack);
    assertThat(board.insideMs[1]).isEqualTo(board.time.rehandleMs(1));
    assertThat(board.placeMs[1][0] - board.carryMs[1][0])
        .isEqualTo(board.time.liftMs(drive(board, 1, SPOT)) + board.time.rehandleMs(1));
    StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
    assertThat(evaluator.inOrder(new int[] {0, 1}, 2, 0).rehandleMs())
        .isEqualTo(board.time.rehandleMs(2));
  }

  private static double drive(Board board, int bundle, Spot spot) {
    return board.offTruck(bundle, board.spots.indexOf(spot)).orElseThrow().driveM();
  }

  @Test
  void aBundleThatComesOffBeforeTheOneBeneathItIsSetDown() {
    Bundle first = aBundle("first").load("L1", 1).piece("W1", 1, 1, 3).build();
    Bundle second = aBundle("second").load("L1", 2).piece("W1", 2, 1, 3).build();
    Board board = Boards.board(task(aSite().build(), first, second), SPOT);
    assertThat(new StackEvaluator(board, Waits.FREE).inOrder(new int[] {1, 0}, 2, 0).setDownMs())
        .isEqualTo(board.time.liftMs(0));
    assertThat(new StackEvaluator(board, Waits.NONE).best(new int[] {0, 1}, 2, 0).setDownMs())
        .isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01})
  void endOverhangCountsFromEveryBundleBeneath(double more) {
    Bundle lower = aBundle("lower").size(3, 0.6, 0.3).piece("W1", 1, 1, 2).build();
    Bundle upper = aBundle("upper").size(3.6 + 2 * more, 0.6, 0.3).piece("W1", 2, 1, 2).build();
    Board board = Boards.board(task(aSite().build(), lower, upper), SPOT);
    assertThat(new StackEvaluator(board, Waits.FREE).inOrder(new int[] {0, 1}, 2, 0).legal())
        .isEqualTo(more == 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01})
  void stackHeightCountsBearers(double more) {
    Bundle lower = aBundle("lower").size(4, 0.6, 0.5).piece("W1", 1, 1, 2).build();
    Bundle upper = aBundle("upper").size(4, 0.6, 0.3 + more).piece("W1", 2, 1, 2).build();
    Settings low =
        Settings.defaults()
            .with(Setting.STACK_HEIGHT, 1.0, "")
            .with(Setting.BEARER_HEIGHT, 0.1, "");
    Board board = Boards.board(task(aSite().build(), low, lower, upper), SPOT);
    assertThat(new StackEvaluator(board, Waits.FREE).best(new int[] {0, 1}, 2, 0).legal())
        .isEqualTo(more == 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1})
  void theZoneCarriesTheWholeStackOnItsLowestBundle(double moreKg) {
    // 2.4 kPa on 4 m by 0.6 m is 587.3 kg.
    double limitKg = 2.4 * 4 * 0.6 * 1000 / 9.80665;
    Bundle lower = aBundle("lower").weighing(300).piece("W1", 1, 1, 2).build();
    Bundle upper = aBundle("upper").weighing(limitKg - 300 + moreKg).piece("W1", 2, 1, 2).build();
    Board board =
        Boards.board(task(aSite().build(), lower, upper), spot("S", "deck", 15, 20, 5, 1));
    assertThat(new StackEvaluator(board, Waits.FREE).best(new int[] {0, 1}, 2, 0).legal())
        .isEqualTo(moreKg == 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1})
  void theGroundCarriesTheWholeStackOnTheBearersOfItsLowestBundle(double moreKg) {
    Task task = task(aSite().build(), aBundle("lower").build());
    Bearers bearers = new Bearers(0.089, 1.2192, 0.4064, 0.15);
    double limitKg = bearers.mostOnGroundKg(4, 0.6, 70);
    Bundle lower = aBundle("lower").weighing(300).piece("W1", 1, 1, 2).build();
    Bundle upper = aBundle("upper").weighing(limitKg - 300 + moreKg).piece("W1", 2, 1, 2).build();
    Board board = Boards.board(task(task.site(), lower, upper), SPOT);
    StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
    assertThat(evaluator.best(new int[] {0, 1}, 2, 0).legal()).isEqualTo(moreKg == 0);
    if (moreKg > 0) {
      assertThat(evaluator.refusal(new int[] {0, 1}, 2, 0)).isEqualTo(Rule.GROUND_PRESSURE);
    }
  }

  /** 3 times 0.3 m is 0.9 m above the underside: two bundles of 0.4 m and a bearer of 0.1 m. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01})
  void aStackIsNoMoreThanThreeTimesAsHighAsItsBundlesAreWide(double more) {
    Bundle lower = aBundle("lower").size(4, 0.3, 0.4).piece("W1", 1, 1, 2).build();
    Bundle upper = aBundle("upper").size(4, 0.3, 0.4 + more).piece("W1", 2, 1, 2).build();
    Settings settings = Settings.defaults().with(Setting.BEARER_HEIGHT, 0.1, "");
    Board board = Boards.board(task(aSite().build(), settings, lower, upper), SPOT);
    StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
    assertThat(evaluator.best(new int[] {0, 1}, 2, 0).legal()).isEqualTo(more == 0);
    if (more > 0) {
      assertThat(evaluator.refusal(new int[] {0, 1}, 2, 0)).isEqualTo(Rule.STACK_SLENDER);
    }
  }

  /** On a slope of 5 % the limit of 3 becomes 1 / (1/3 + 0.05) = 2.609: 0.783 m on 0.3 m. */
  @ParameterizedTest
  @ValueSource(doubles = {0.78, 0.79})
  void onASlopeAStackIsLower(double heightM) {
    Yard slope =
        new Yard(
            "slope",
            Outline.box(5, 6, 30, 12),
            70,
            "",
            OptionalDouble.of(0.05),
            OptionalDouble.empty());
    Bundle tall = aBundle("tall").size(4, 0.3, heightM).piece("W1", 1, 1, 2).build();
    Board board =
        Boards.board(task(aSite().yards(slope).build(), tall), spot("S", "slope", 15, 8, 5, 1));
    assertThat(board.near[0]).hasSize(heightM < 0.783 ? 1 : 0);
  }

  @Test
  void heavyPiecesAreNotPutAtAnkleHeightWhereThereIsAChoice() {
    BundleBuilder heavy = aBundle("heavy").load("L1", 1);
    BundleBuilder light = aBundle("light").load("L1", 2);
    for (int i = 1; i <= 4; i++) {
      // Both are needed in turn, so that rehandling is the same whichever lies on top.
      heavy.piece("W1", 2 * i, 1, 3.9);
      light.piece("W1", 2 * i + 1, 1, 1);
    }
    Settings free = Settings.defaults().with(Setting.REHANDLE_PIECE, 0, "");
    Board board = Boards.board(task(aSite().build(), free, heavy.build(), light.build()), SPOT);
    StackCost best = new StackEvaluator(board, Waits.NONE).best(new int[] {0, 1}, 2, 0);
    StackCost heavyOnTop = new StackEvaluator(board, Waits.FREE).inOrder(new int[] {1, 0}, 2, 0);
    assertThat(best.order()).containsExactly(0, 1);
    assertThat(heavyOnTop.pickMs()).isLessThan(best.pickMs());
  }
}
