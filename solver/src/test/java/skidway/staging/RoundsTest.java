package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.Tasks.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Proof;

/** When a search that stops at a good enough plan goes on, and which of its plans it keeps. */
class RoundsTest {
  private final List<Long> spent = new ArrayList<>();
  private final StopButton stop = new StopButton();

  private Plan best(double until, UnaryOperator<Plan> round) {
    spent.clear();
    return new Rounds(new SearchLimits(7, 1600, until), stop)
        .best(
            limits -> {
              assertThat(limits.seed()).isEqualTo(7);
              spent.add(limits.calculations());
              return round.apply(plan(100 - spent.size()));
            });
  }

  private static Plan plan(double carryS) {
    return aPlan()
        .effort(new Effort(carryS, 0, 0, 0, 0))
        .build(task(aSite().build(), aBundle("B1").piece("W1", 1, 1, 3).build()));
  }

  /** At most so much above the best possible. */
  private static Plan proven(Plan plan, double share) {
    return plan.withProof(Optional.of(new Proof(1000, 1000 * (1 + share), List.of())));
  }

  @Test
  void aSingleRoundWhereOnlyTheBestIsGoodEnough() {
    best(0, plan -> proven(plan, 0.5));
    assertThat(spent).containsExactly(1600L);
  }

  @Test
  void eachRoundIsTwiceAsLongAndAllTogetherNoLongerThanAllowed() {
    Plan best = best(0.01, plan -> proven(plan, 0.0101));
    assertThat(spent).containsExactly(100L, 200L, 400L, 800L);
    assertThat(spent.stream().mapToLong(s -> s).sum()).isLessThanOrEqualTo(1600);
    assertThat(best.effort().totalS()).isEqualTo(96);
  }

  @Test
  void whatIsProvenJustGoodEnoughEndsIt() {
    best(0.25, plan -> proven(plan, spent.size() == 2 ? 0.25 : 0.251));
    assertThat(spent).containsExactly(100L, 200L);
  }

  @Test
  void whatIsNotProvenIsNeverGoodEnough() {
    best(0.5, plan -> plan);
    assertThat(spent).hasSize(4);
  }

  @Test
  void aWorsePlanOfALongerRoundIsNotKept() {
    Plan best = best(0.01, plan -> proven(plan(spent.size() == 2 ? 50 : 60), 0.3));
    assertThat(best.effort().totalS()).isEqualTo(50);
  }

  @Test
  void moreBundlesPlacedCountMoreThanTime() {
    Plan left = aPlan().unplaced("B1").build(task(aSite().build()));
    Plan best = best(0.01, plan -> spent.size() == 3 ? proven(plan, 0.3) : proven(left, 0.3));
    assertThat(best.unplaced()).isEmpty();
  }

  @Test
  void whoStopsItGetsTheBestSoFar() {
    Plan best =
        best(
            0.01,
            plan -> {
              stop.press();
              return proven(plan, 0.3);
            });
    assertThat(spent).containsExactly(100L);
    assertThat(best.effort().totalS()).isEqualTo(99);
  }
}
