package skidway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import skidway.audit.Audit;
import skidway.job.History;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.progress.Event;
import skidway.staging.Laying;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;

/** Plans that are looked at for loads that may be late. */
class HedgeTest {
  private static final SearchLimits LIMITS = new SearchLimits(1, 100);
  private static final Job JOB = JobReader.read(Path.of("..", "demo-data", "cabin"));
  private static final Planner.Planned PLAIN =
      Planner.plan(JOB, LIMITS, (p, d, s) -> {}, new StopButton());

  /** L2 comes on the first day; the crew begins on the second and has work for part of it. */
  @Test
  void casesThatLeaveThePullListAloneAreOne() {
    List<Scenario> all = Scenario.all(JOB.task(), List.of(new Lateness("L2", 0, 3)));
    assertThat(all).extracting(Scenario::cases).containsExactly(1, 3);
    assertThat(all.get(0).names()).containsExactly("on time");
    assertThat(all.get(0).task().pullOrder().placements())
        .isEqualTo(JOB.task().pullOrder().placements());
    assertThat(all.get(0).lostS()).isZero();
    Scenario late = all.get(1);
    assertThat(late.names()).containsExactly("L2 1 day late", "L2 2 days late", "L2 3 days late");
    assertThat(late.task().start().held()).isNotEmpty();
    assertThat(late.task().pullOrder().placements())
        .isNotEqualTo(JOB.task().pullOrder().placements());
    assertThat(late.lostS()).isPositive();
  }

  @Test
  void everyLatenessMeetsEveryOther() {
    List<Lateness> lates = List.of(new Lateness("L1", 0, 1), new Lateness("L2", 2, 4));
    assertThat(Hedge.cases(lates)).isEqualTo(6);
    assertThat(Scenario.all(JOB.task(), lates).stream().mapToInt(Scenario::cases).sum())
        .isEqualTo(6);
  }

  @Test
  void thePlanTakenCostsLeastOverAllCases() {
    Plan plain = PLAIN.plan();
    Hedge.Hedged hedged =
        Hedge.plan(
            JOB, List.of(new Lateness("L2", 0, 3)), LIMITS, (p, d, s) -> {}, new StopButton());
    assertThat(hedged.unhedged().planned().plan()).isEqualTo(plain);
    assertThat(hedged.candidates()).hasSizeGreaterThan(2);
    assertThat(hedged.candidates()).contains(hedged.chosen());
    assertThat(hedged.chosen().planned().audit().findings()).isEmpty();
    assertThat(hedged.candidates())
        .allMatch(
            c ->
                Math.round(c.expectedS(hedged.scenarios()))
                    >= Math.round(hedged.chosen().expectedS(hedged.scenarios())));
    for (Hedge.Candidate candidate : hedged.candidates()) {
      LateCase onTime = candidate.cases().get(0);
      assertThat(onTime.hoursS()).isEqualTo(onTime.unchangedS());
      assertThat(candidate.cases())
          .allMatch(c -> c.hoursS() <= c.unchangedS() + 1e-6)
          .allMatch(LateCase::holds);
    }
    Plan laid = Laying.of(JOB.task(), plain, plain.baselines()).orElseThrow();
    assertThat(laid.effort()).isEqualTo(plain.effort());
    assertThat(laid.stacks()).containsExactlyInAnyOrderElementsOf(plain.stacks());
    assertThat(laid.steps()).isEqualTo(plain.steps());
  }

  /** The load before the late one lies as planned, and that can have happened. */
  @Test
  void theRestIsPlannedAnewWhereTheLateLoadShouldHaveCome() {
    Plan plain = PLAIN.plan();
    History history = LateLoad.of(JOB, plain, late());
    assertThat(history.progress().contradictions()).isEmpty();
    assertThat(history.progress().arrived()).containsOnlyKeys("L1");
    assertThat(history.progress().lying().values().stream().flatMap(List::stream))
        .containsExactlyInAnyOrder("B01", "B02", "B03");
    assertThat(history.progress().pulled()).isEmpty();
    Event last = history.events().get(history.events().size() - 1);
    Load l2 = JOB.task().delivery().load("L2").orElseThrow();
    assertThat(last)
        .isEqualTo(
            new Event.Late(last.seq(), l2.arrival(), last.by(), "L2", l2.arrival().plusDays(1)));
  }

  /**
   * What was done before is the unloading of the first load, by the audit of that load alone. The
   * audit's walks are its own, so the sums differ by a little.
   */
  @Test
  void aCaseTakesWhatWasDoneAndWhatTheRestTakesAnew() {
    LateCase late = LateCase.of(JOB, PLAIN, late(), LIMITS, new StopButton());
    Plan anew =
        Planner.replan(
                LateLoad.of(JOB, PLAIN.plan(), late()),
                Set.of(),
                new SearchLimits(1, 1),
                (p, d, s) -> {},
                new StopButton())
            .plan();
    double doneS = unloadingS("L1", PLAIN.plan());
    assertThat(doneS).isGreaterThan(600);
    assertThat(late.hoursS()).isCloseTo(doneS + anew.effort().totalS(), withinPercentage(0.5));
  }

  private Scenario late() {
    return Scenario.all(JOB.task(), List.of(new Lateness("L2", 1, 1))).get(0);
  }

  private double unloadingS(String loadId, Plan plan) {
    Task task = JOB.task();
    Delivery first =
        new Delivery(
            List.of(task.delivery().load(loadId).orElseThrow()),
            task.delivery().bundles().stream().filter(b -> b.loadId().equals(loadId)).toList());
    Set<String> ids = first.bundles().stream().map(Bundle::id).collect(Collectors.toSet());
    Task alone =
        new Task(
            task.jobName(),
            task.site(),
            first,
            task.settings(),
            task.schedule(),
            task.figures(),
            task.start());
    Plan part =
        new Plan(
            plan.jobName(),
            1,
            plan.inputs(),
            "",
            plan.search(),
            plan.stacks().stream()
                .map(
                    s -> new Stack(s.spot(), s.bundleIds().stream().filter(ids::contains).toList()))
                .filter(s -> !s.bundleIds().isEmpty())
                .toList(),
            plan.waitingPlaces(),
            plan.steps().stream().filter(s -> ids.contains(s.bundleId())).toList(),
            List.of(),
            List.of(),
            plan.effort(),
            List.of(),
            List.of());
    return Audit.of(alone, part).effort().machineS();
  }
}
