package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import skidway.audit.Audit;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.site.Outline;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.testkit.SiteBuilder;
import skidway.timber.Bundle;

/** Staging when something lies there already. */
class OnWhatLiesTest {
  private final Bundle early = aBundle("early").load("L1", 1).piece("W1", 1, 1, 3).build();
  private final Bundle late = aBundle("late").load("L1", 2).piece("W1", 4, 1, 3).build();
  private final Bundle next = aBundle("next").load("L2", 1).piece("W1", 2, 1, 3).build();

  @Test
  void whatLiesWellStaysWithoutASingleMove() {
    Task empty = task(aSite().build(), early, late, next);
    Plan first = stage(empty);
    Task begun = empty.startingFrom(start(first, Set.of("early", "late"), Set.of()));
    Plan second = stage(begun);
    assertThat(second.unplaced()).isEmpty();
    assertThat(second.effort().moveS()).isZero();
    assertThat(second.steps()).extracting(s -> s.bundleId()).containsExactly("next");
    assertThat(spotOf(second, "early")).isEqualTo(spotOf(first, "early"));
    assertThat(spotOf(second, "late")).isEqualTo(spotOf(first, "late"));
  }

  @Test
  void aMoveIsMadeWhenItPays() {
    Task empty = task(aSite().build(), early, late);
    Spot spot = stage(empty).stacks().get(0).spot();
    Start start =
        new Start(
            List.of(new Stack(spot, List.of("early", "late"))),
            Map.of(),
            List.of(spot),
            Set.of(),
            Set.of());
    Plan plan = stage(empty.startingFrom(start));
    assertThat(plan.effort().totalS())
        .isLessThanOrEqualTo(plan.baselines().get(0).effort().totalS());
    plan.steps()
        .forEach(
            s -> assertThat(s.kind()).isIn(StepKind.MOVE, StepKind.SET_ASIDE, StepKind.LIFT_ON));
  }

  @Test
  void aBundleWithCutBandsStaysWhereItLies() {
    Task empty = task(aSite().build(), early, late, next);
    Plan first = stage(empty);
    Task begun = empty.startingFrom(start(first, Set.of("early", "late"), Set.of("early", "late")));
    Plan second = stage(begun);
    assertThat(second.steps()).noneMatch(s -> s.bundleId().equals("early"));
    assertThat(second.steps()).noneMatch(s -> s.bundleId().equals("late"));
  }

  /** 500 kg on two bearers at the very ends press with 45.9 kPa, see {@link RearrangingTest}. */
  @Test
  void whatMayLieOnTooFewBearersGetsBearersThatTheAuditAccepts() {
    Bundle heavy = aBundle("heavy").weighing(500).piece("W1", 1, 1, 3).build();
    Yard soft = new Yard("yard", Outline.box(5, 6, 30, 12), 45.9);
    Task empty = task(aSite().yards(soft).build(), heavy);
    Spot spot = SiteBuilder.spot("Y", "yard", 14, 9, 4, 0.9);
    Stack there = new Stack(spot, List.of("heavy"));
    Start start = new Start(List.of(there), Map.of(), List.of(spot), Set.of(), Set.of());
    Task begun = empty.startingFrom(start);
    Plan plan = stage(begun);
    assertThat(plan.effort().moveS()).isPositive();
    assertThat(Audit.of(begun, plan).findings()).isEmpty();
    assertThat(plan.steps().get(plan.steps().size() - 1).bearers().count()).isGreaterThan(1);
  }

  private static Plan stage(Task task) {
    return Stager.stage(
        task, new SearchLimits(7, 3000), used -> List.of(), (p, d, s) -> {}, new StopButton());
  }

  private static Start start(Plan plan, Set<String> down, Set<String> fixed) {
    List<Stack> stacks =
        plan.stacks().stream()
            .map(s -> new Stack(s.spot(), s.bundleIds().stream().filter(down::contains).toList()))
            .filter(s -> !s.bundleIds().isEmpty())
            .toList();
    return new Start(
        stacks, Map.of(), plan.stacks().stream().map(Stack::spot).toList(), fixed, Set.of());
  }

  private static String spotOf(Plan plan, String bundleId) {
    return plan.stacks().stream()
        .filter(s -> s.bundleIds().contains(bundleId))
        .map(s -> s.spot().id())
        .findFirst()
        .orElseThrow();
  }
}
