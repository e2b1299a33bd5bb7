package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.site.Outline;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.timber.Bundle;

/** The order of moves of what lies already. */
class RearrangingTest {
  private static final Spot D1 = spot("D1", "deck", 15, 19, 4, 0.9);
  private static final Spot D2 = spot("D2", "deck", 15, 21, 4, 0.9);
  private static final Spot Y1 = spot("Y1", "yard", 8, 8, 4, 0.9);
  private static final Spot Y2 = spot("Y2", "yard", 14, 8, 4, 0.9);
  private static final Spot Y3 = spot("Y3", "yard", 20, 8, 4, 0.9);
  private static final Spot Y4 = spot("Y4", "yard", 26, 8, 4, 0.9);

  private static Bundle bundle(String id) {
    return aBundle(id).load("L1", 1).weighing(500).piece("W1", 1, 1, 3).build();
  }

  private static Occupancy lying(Site site, int[][] excludes, List<Spot> spots, Stack... stacks) {
    List<Bundle> bundles = new ArrayList<>();
    for (Stack stack : stacks) {
      stack.bundleIds().forEach(id -> bundles.add(bundle(id)));
    }
    Task task =
        task(site, bundles.toArray(Bundle[]::new))
            .startingFrom(new Start(List.of(stacks), Map.of(), spots, Set.of(), Set.of()));
    Board board = Boards.board(task, excludes, spots.toArray(Spot[]::new));
    return Boards.ground(board).empty();
  }

  private static Unloading.Sequence lifts(Occupancy occupancy) {
    return Rearranging.of(occupancy).sequence();
  }

  /** NEW may come onto the deck only when OLD has left it, though it is the first in the list. */
  @Test
  void oneStackLeavesTheDeckBeforeAnotherGrowsThere() {
    List<Spot> spots = List.of(D1, D2, Y1, Y2);
    Stack there = new Stack(Y1, List.of("NEW"));
    Stack here = new Stack(D1, List.of("OLD"));
    Occupancy enough = lying(aSite().deckTotal(1000).build(), new int[4][0], spots, there, here);
    enough.put(0, 1);
    enough.put(1, 3);
    assertThat(lifts(enough).lifts())
        .extracting(Unloading.Lift::kind, Unloading.Lift::bundle)
        .containsExactly(tuple(StepKind.MOVE, 0), tuple(StepKind.MOVE, 1));
    Occupancy less = lying(aSite().deckTotal(999).build(), new int[4][0], spots, there, here);
    less.put(0, 1);
    less.put(1, 3);
    assertThat(lifts(less).complete()).isTrue();
    assertThat(lifts(less).lifts())
        .extracting(Unloading.Lift::kind, Unloading.Lift::bundle)
        .containsExactly(tuple(StepKind.MOVE, 1), tuple(StepKind.MOVE, 0));
  }

  /** Deck and yard change places; only off the deck is there a place to wait. */
  @Test
  void aFullDeckTakesNobodyWhoWaits() {
    List<Spot> spots = List.of(D1, D2, Y1, Y2);
    Occupancy swap =
        lying(
            aSite().deckTotal(500).build(),
            new int[4][0],
            spots,
            new Stack(Y1, List.of("NEW")),
            new Stack(D1, List.of("OLD")));
    swap.put(0, 0);
    swap.put(1, 2);
    assertThat(lifts(swap).lifts())
        .extracting(Unloading.Lift::kind, Unloading.Lift::bundle, Unloading.Lift::to)
        .containsExactly(
            tuple(StepKind.SET_ASIDE, 0, 3),
            tuple(StepKind.MOVE, 1, 2),
            tuple(StepKind.LIFT_ON, 0, 0));
  }

  /**
   * Nobody knows what lies beneath 500 kg, so two bearers of 0.089 by 0.6 m at the very ends count:
   * 500 kg x 9.80665 m/s2 / 2 / 0.0534 m2 = 45.9 kPa.
   */
  @Test
  void whatMayLieOnTooFewBearersIsLiftedForNewOnes() {
    assertThat(lifts(onYard(46)).lifts()).isEmpty();
    assertThat(onYard(46).stack(1).liftAsideMs()).isZero();
    assertThat(lifts(onYard(45.9)).lifts())
        .extracting(Unloading.Lift::kind, Unloading.Lift::bundle, Unloading.Lift::to)
        .containsExactly(tuple(StepKind.SET_ASIDE, 0, 0), tuple(StepKind.LIFT_ON, 0, 1));
    assertThat(onYard(45.9).legal()).isTrue();
    assertThat(onYard(45.9).stack(1).liftAsideMs()).isPositive();
    assertThat(onYard(45.9).isBetterThan(onYard(46))).isFalse();
  }

  private static Occupancy onYard(double allowedKpa) {
    Yard yard = new Yard("yard", Outline.box(5, 6, 30, 12), allowedKpa);
    Occupancy lying =
        lying(
            aSite().yards(yard).build(),
            new int[2][0],
            List.of(Y2, Y3),
            new Stack(Y3, List.of("A")));
    lying.put(0, 1);
    return lying;
  }

  /** What the crew overloaded stays so, and is only made lighter. */
  @Test
  void anOverloadedDeckGetsNothingMore() {
    List<Spot> spots = List.of(D1, D2, Y1, Y2);
    Occupancy over =
        lying(
            aSite().deckTotal(800).build(),
            new int[4][0],
            spots,
            new Stack(D1, List.of("A", "B")),
            new Stack(Y1, List.of("C")));
    over.put(0, 0);
    over.put(1, 3);
    over.put(2, 2);
    assertThat(lifts(over).lifts())
        .extracting(Unloading.Lift::kind, Unloading.Lift::bundle, Unloading.Lift::to)
        .containsExactly(tuple(StepKind.MOVE, 1, 3));
  }

  /**
   * Nobody knows what A lies on, so it keeps what lies on it as far as two bearers of 0.089 by 0.6
   * m at its very ends bear it; new bearers are chosen for what lies on them.
   */
  @Test
  void unknownBearersBearNoMoreThanLiesOnThemNorThanTwoAtTheEnds() {
    assertThat(threeHigh(200).mostKg(0, 0, true)).isEqualTo(1500);
    double twoKg = 2 * 60_000 * 0.0534 / 9.80665;
    assertThat(threeHigh(60).mostKg(0, 0, true)).isCloseTo(twoKg, Percentage.withPercentage(0.1));
    assertThat(threeHigh(60).mostKg(0, 0, false)).isGreaterThan(1500);
  }

  private static Board threeHigh(double allowedKpa) {
    return lying(
            aSite().yards(new Yard("yard", Outline.box(5, 6, 30, 12), allowedKpa)).build(),
            new int[4][0],
            List.of(Y1, Y2, Y3, Y4),
            new Stack(Y1, List.of("A", "B", "C")))
        .board;
  }

  /** Random small yards, some with a deck that bears little, against the search of all orders. */
  @Test
  void theOrderIsFoundWhereThereIsOneAndHardlyLongerThanNeeded() {
    int yards = Integer.getInteger("skidway.yards", 40);
    int impossible = 0;
    int aside = 0;
    for (int seed = 0; seed < yards; seed++) {
      double totalKg = seed % 2 == 0 ? Double.POSITIVE_INFINITY : 1100;
      Random random = new Random(seed);
      Occupancy goal = random(random, totalKg);
      while (goal.unplaced() > 0 || goal.brokenRules() > 0 || !startsLegal(goal)) {
        goal = random(random, totalKg);
      }
      OptionalInt fewest = new FewestLifts(goal, totalKg).count();
      Unloading.Sequence found = lifts(goal);
      assertThat(found.complete())
          .as("yard %d: %s", seed, told(goal, found))
          .isEqualTo(fewest.isPresent());
      if (fewest.isEmpty()) {
        impossible++;
        continue;
      }
      assertThat(found.lifts())
          .as("yard %d: %s", seed, told(goal, found))
          .hasSizeBetween(fewest.getAsInt(), fewest.getAsInt() + 1);
      assertThat(mostOnDeckKg(goal.board, found))
          .as("yard %d: %s", seed, told(goal, found))
          .isLessThanOrEqualTo(totalKg);
      if (found.lifts().stream().anyMatch(lift -> lift.kind() == StepKind.SET_ASIDE)) {
        aside++;
      }
    }
    assertThat(List.of(impossible, aside)).allMatch(count -> count > yards / 10);
  }

  private static double mostOnDeckKg(Board board, Unloading.Sequence lifts) {
    int[] at = board.home.clone();
    double mostKg = 0;
    for (Unloading.Lift lift : lifts.lifts()) {
      at[lift.bundle()] = lift.to();
      double onDeckKg =
          IntStream.range(0, at.length)
              .filter(b -> board.spots.get(at[b]).zoneId().equals("deck"))
              .mapToDouble(b -> board.massKg[b])
              .sum();
      mostKg = Math.max(mostKg, onDeckKg);
    }
    return mostKg;
  }

  /** Where everything lies and shall lie, and the lifts, for a failure's message. */
  private static String told(Occupancy goal, Unloading.Sequence found) {
    List<String> told = new ArrayList<>();
    Board board = goal.board;
    for (int b = 0; b < board.bundleCount(); b++) {
      int tier = goal.stack(goal.spotOf(b)).order().indexOf(b) + 1;
      told.add(
          String.format(
              Locale.ROOT,
              "%d, %.0f kg, from spot %d tier %d to spot %d tier %d",
              b,
              board.massKg[b],
              board.home[b],
              board.homeTier[b],
              goal.spotOf(b),
              tier));
    }
    found.lifts().forEach(l -> told.add(l.kind() + " " + l.bundle() + " to " + l.to()));
    return String.join("; ", told);
  }

  private static boolean startsLegal(Occupancy goal) {
    Occupancy start = Boards.ground(goal.board).empty();
    for (int b = 0; b < goal.board.bundleCount(); b++) {
      start.put(b, goal.board.home[b]);
    }
    return start.brokenRules() == 0;
  }

  private static Occupancy random(Random random, double deckTotalKg) {
    List<Spot> spots = List.of(D1, D2, Y1, Y2, Y3, Y4);
    int count = 3 + random.nextInt(3);
    Map<Spot, List<String>> start = new HashMap<>();
    List<Bundle> bundles = new ArrayList<>();
    for (int b = 0; b < count; b++) {
      bundles.add(
          aBundle("B" + b)
              .load("L1", b + 1)
              .weighing(400 + 100 * random.nextInt(3))
              .piece("W1", 1 + random.nextInt(5), b + 1, 3)
              .build());
      Spot spot = spots.get(random.nextInt(4));
      start.computeIfAbsent(spot, s -> new ArrayList<>()).add("B" + b);
    }
    int[][] excludes = new int[6][0];
    if (random.nextBoolean()) {
      excludes[3] = new int[] {4};
      excludes[4] = new int[] {3};
    }
    if (random.nextBoolean()) {
      excludes[0] = new int[] {1};
      excludes[1] = new int[] {0};
    }
    Site site =
        Double.isFinite(deckTotalKg) ? aSite().deckTotal(deckTotalKg).build() : aSite().build();
    List<Stack> stacks =
        spots.stream()
            .filter(start::containsKey)
            .map(s -> new Stack(s, start.getOrDefault(s, List.of())))
            .toList();
    Task task =
        task(site, bundles.toArray(Bundle[]::new))
            .startingFrom(new Start(stacks, Map.of(), spots, Set.of(), Set.of()));
    Occupancy goal =
        Boards.ground(Boards.board(task, excludes, spots.toArray(Spot[]::new))).empty();
    for (int b = 0; b < count; b++) {
      for (int tries = 0; tries < 20 && goal.spotOf(b) < 0; tries++) {
        goal.put(b, random.nextInt(spots.size()));
        if (!goal.legal()) {
          goal.take(b);
        }
      }
    }
    return goal;
  }
}
