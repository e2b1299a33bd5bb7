package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.testkit.RandomDelivery;
import skidway.timber.Bundle;

class StagerTest {
  private static final PathCheck ALL_OPEN = used -> List.of();
  private static final Watcher NOBODY = (placed, delivered, personS) -> {};

  private static Plan stage(Task task, long calculations) {
    return Stager.stage(
        task, new SearchLimits(1, calculations), ALL_OPEN, NOBODY, new StopButton());
  }

  private static Task randomTask(long seed, int bundles) {
    return task(aSite().build(), RandomDelivery.bundles(new Random(seed), bundles));
  }

  @Test
  void theSameInputsGiveTheSamePlan() {
    assertThat(stage(randomTask(3, 15), 3000)).isEqualTo(stage(randomTask(3, 15), 3000));
  }

  @ParameterizedTest
  @ValueSource(longs = {5, 6, 7})
  void theScoreNeverDriftsFromWhatACountAfreshGives(long seed) {
    Plan plan =
        Stager.stage(
            randomTask(seed, 12),
            new SearchLimits(seed, 1000),
            ALL_OPEN,
            NOBODY,
            new StopButton(),
            EnvironmentMode.FULL_ASSERT);
    assertThat(plan.unplaced()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void smallJobsAreStagedAtTheirVeryBest(long seed) {
    Spot[] spots = {
      spot("A", "yard", 10, 8, 4.5, 1),
      spot("B", "yard", 20, 8, 4.5, 1),
      rack("R", "yard", 26, 8, 2, 1)
    };
    Task task = task(aSite().spots(spots).build(), RandomDelivery.bundles(new Random(seed), 5));
    Board board = Survey.of(task);
    assertThat(board.spotCount()).isEqualTo(3);
    long cheapest = Long.MAX_VALUE;
    int fewestLeft = Integer.MAX_VALUE;
    for (int code = 0; code < 1024; code++) {
      Occupancy occupancy = Boards.ground(board).empty();
      for (int b = 0, rest = code; b < 5; b++, rest /= 4) {
        occupancy.put(b, rest % 4 - 1);
      }
      if (occupancy.legal() && Unloading.of(occupancy).complete()) {
        boolean better =
            occupancy.unplaced() < fewestLeft
                || (occupancy.unplaced() == fewestLeft && occupancy.costMs() < cheapest);
        if (better) {
          fewestLeft = occupancy.unplaced();
          cheapest = occupancy.costMs();
        }
      }
    }
    Plan plan = stage(task, 5000);
    assertThat(plan.unplaced()).hasSize(fewestLeft);
    assertThat(plan.effort().totalS()).isCloseTo(cheapest / 1000.0, within(0.01));
    assertThat(plan.proof().orElseThrow().lowestPersonS()).isLessThanOrEqualTo(cheapest / 1000.0);
    assertThat(plan.proof().orElseThrow().share()).isLessThan(0.2);
  }

  @Test
  void reasonsAddUpToAPlanThatNoSingleMoveImproves() {
    Plan plan = stage(randomTask(7, 20), 5000);
    assertThat(plan.reasons()).hasSize(20);
    assertThat(plan.reasons())
        .allSatisfy(r -> assertThat(r.nextBestPersonS().orElse(0)).isNotNegative())
        .allSatisfy(r -> assertThat(r.sentences()).isNotEmpty());
  }

  @Test
  void spotsThatShutAPathTogetherAreNotUsedTogether() {
    Task task = randomTask(2, 10);
    Plan free = stage(task, 2000);
    List<Stack> stacks = free.stacks();
    assertThat(stacks).hasSizeGreaterThan(1);
    Spot first = stacks.get(0).spot();
    Spot second = stacks.get(1).spot();
    PathCheck together =
        used ->
            used.stream().anyMatch(s -> s.footprint().equals(first.footprint()))
                    && used.stream().anyMatch(s -> s.footprint().equals(second.footprint()))
                ? List.of(
                    used.stream()
                        .filter(
                            s ->
                                s.footprint().equals(first.footprint())
                                    || s.footprint().equals(second.footprint()))
                        .map(Spot::id)
                        .toList())
                : List.of();
    Plan repaired =
        Stager.stage(task, new SearchLimits(1, 2000), together, NOBODY, new StopButton());
    assertThat(repaired.unplaced()).isEmpty();
    assertThat(together.shutBy(repaired.stacks().stream().map(Stack::spot).toList())).isEmpty();
  }

  @Test
  void aBundleTooHeavyForTheMachineIsListedWithTheRuleThatBinds() {
    Bundle heavy = aBundle("heavy").weighing(5000).piece("W1", 1, 1, 2).build();
    Plan plan = stage(task(aSite().build(), heavy), 100);
    assertThat(plan.unplaced()).extracting("rule").containsExactly(Rule.MACHINE_CAPACITY);
    assertThat(plan.stacks()).isEmpty();
  }

  @Test
  void withoutAnyRoomEveryBundleIsListed() {
    Task task =
        task(
            aSite().yards().deckAllowed(0.001).build(), aBundle("B1").piece("W1", 1, 1, 2).build());
    assertThat(stage(task, 100).unplaced()).hasSize(1);
  }

  @Test
  void aPressedStopButtonStillGivesAWholePlan() {
    StopButton stop = new StopButton();
    stop.press();
    Plan plan =
        Stager.stage(randomTask(4, 12), new SearchLimits(1, 1_000_000), ALL_OPEN, NOBODY, stop);
    assertThat(plan.unplaced()).isEmpty();
    assertThat(plan.search().stopped()).isTrue();
  }

  @Test
  void everyBundleIsEitherPlacedOrListed() {
    Plan plan = stage(randomTask(9, 60), 2000);
    int placed = plan.stacks().stream().mapToInt(s -> s.bundleIds().size()).sum();
    assertThat(placed + plan.unplaced().size()).isEqualTo(60);
    assertThat(IntStream.range(0, plan.steps().size()))
        .allMatch(i -> plan.steps().get(i).number() == i + 1);
  }
}
