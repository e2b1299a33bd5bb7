package skidway;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.plan.Plan;
import skidway.staging.Laying;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;

/** Plans that are looked at for loads that may be late. */
class HedgeTest {
  private static final SearchLimits LIMITS = new SearchLimits(1, 300);
  private final Job job = JobReader.read(Path.of("..", "demo-data", "cabin"));

  /** L2 comes on the first day; the crew begins on the second and has work for part of it. */
  @Test
  void casesThatLeaveThePullListAloneAreOne() {
    List<Scenario> all = Scenario.all(job.task(), List.of(new Lateness("L2", 0, 3)));
    assertThat(all).extracting(Scenario::cases).containsExactly(1, 3);
    assertThat(all.get(0).names()).containsExactly("on time");
    assertThat(all.get(0).task().pullOrder().placements())
        .isEqualTo(job.task().pullOrder().placements());
    assertThat(all.get(0).lostS()).isZero();
    Scenario late = all.get(1);
    assertThat(late.names()).containsExactly("L2 1 day late", "L2 2 days late", "L2 3 days late");
    assertThat(late.task().start().held()).isNotEmpty();
    assertThat(late.task().pullOrder().placements())
        .isNotEqualTo(job.task().pullOrder().placements());
    assertThat(late.lostS()).isPositive();
  }

  @Test
  void everyLatenessMeetsEveryOther() {
    List<Lateness> lates = List.of(new Lateness("L1", 0, 1), new Lateness("L2", 2, 4));
    assertThat(Hedge.cases(lates)).isEqualTo(6);
    assertThat(Scenario.all(job.task(), lates).stream().mapToInt(Scenario::cases).sum())
        .isEqualTo(6);
  }

  @Test
  void thePlanTakenCostsLeastOverAllCases() {
    Plan plain = Planner.plan(job, LIMITS, (p, d, s) -> {}, new StopButton()).plan();
    Hedge.Hedged hedged =
        Hedge.plan(
            job, List.of(new Lateness("L2", 0, 3)), LIMITS, (p, d, s) -> {}, new StopButton());
    assertThat(hedged.unhedged().planned().plan()).isEqualTo(plain);
    assertThat(hedged.candidates()).hasSizeGreaterThan(2);
    assertThat(hedged.candidates()).contains(hedged.chosen());
    assertThat(hedged.chosen().planned().audit().findings()).isEmpty();
    assertThat(hedged.candidates())
        .allMatch(
            c ->
                Math.round(c.expectedS(hedged.scenarios()))
                    >= Math.round(hedged.chosen().expectedS(hedged.scenarios())));
    Plan laid = Laying.of(job.task(), plain, plain.baselines()).orElseThrow();
    assertThat(laid.effort()).isEqualTo(plain.effort());
    assertThat(laid.stacks()).containsExactlyInAnyOrderElementsOf(plain.stacks());
    assertThat(laid.steps()).isEqualTo(plain.steps());
  }
}
