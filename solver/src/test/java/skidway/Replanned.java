package skidway;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import skidway.audit.Finding;
import skidway.job.History;
import skidway.job.Job;
import skidway.plan.Baseline;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;

/**
 * The plan for what is left after a disruption, beside changing nothing and planning as if nothing
 * lay there.
 *
 * @param left how many bundles there are still to plan for
 * @param findings of the audit that a plan could have avoided
 */
record Replanned(String job, long seed, int left, Plan plan, List<Finding> findings) {
  static Replanned after(Job job, Plan plan, long seed, long calculations) {
    History history = new History(job, List.of(plan), Disruption.of(job, plan, new Random(seed)));
    assertThat(history.progress().contradictions()).isEmpty();
    Planner.Planned planned =
        Planner.replan(
            history,
            Set.of(),
            new SearchLimits(seed, calculations),
            (p, d, s) -> {},
            new StopButton());
    Set<String> cannotBeMended = spotsWhereSomethingStays(history);
    List<Finding> findings =
        planned.audit().findings().stream()
            .filter(
                f ->
                    f.rule() != Rule.PLACED
                        && Collections.disjoint(cannotBeMended, List.of(f.where().split(", ", -1))))
            .toList();
    int left = history.remaining(Set.of()).delivery().bundles().size();
    return new Replanned(job.task().jobName(), seed, left, planned.plan(), findings);
  }

  /** What nobody may lift may have been put down against the rules. */
  private static Set<String> spotsWhereSomethingStays(History history) {
    Task left = history.remaining(Set.of());
    Plan before = history.newest().orElseThrow();
    return left.start().stacks().stream()
        .filter(
            stack ->
                stack.bundleIds().stream().anyMatch(left.start().fixed()::contains)
                    || (left.site().byHand() && !liesAsPlanned(stack, before)))
        .map(stack -> stack.spot().id())
        .collect(Collectors.toSet());
  }

  /** On the bearers of the plan, with nothing on it that was meant for another spot. */
  private static boolean liesAsPlanned(Stack lies, Plan plan) {
    return plan.stacks().stream()
        .filter(planned -> planned.spot().id().equals(lies.spot().id()))
        .map(Stack::bundleIds)
        .anyMatch(
            ids -> ids.get(0).equals(lies.bundleIds().get(0)) && ids.containsAll(lies.bundleIds()));
  }

  int placed() {
    return left - plan.unplaced().size();
  }

  double totalS() {
    return plan.effort().totalS();
  }

  Optional<Baseline> baseline(String name) {
    return plan.baselines().stream().filter(b -> b.name().equals(name)).findFirst();
  }

  /** What is wrong with it, a sentence each. */
  List<String> faults() {
    List<String> faults =
        findings.stream()
            .map(f -> f.rule() + ": " + f.sentence())
            .collect(Collectors.toCollection(ArrayList::new));
    plan.baselines().stream()
        .filter(this::isWorseThan)
        .map(b -> "worse than '" + b.name() + "'")
        .forEach(faults::add);
    return faults.stream().map(fault -> job + " " + seed + ": " + fault).toList();
  }

  private boolean isWorseThan(Baseline other) {
    return placed() != other.placed()
        ? placed() < other.placed()
        : totalS() > other.effort().totalS() + 1;
  }

  /** All of it in a line. */
  String line() {
    String line =
        String.format(
            Locale.ROOT,
            "%s %d: %d of %d placed, %.0f s, moves %.0f s",
            job,
            seed,
            placed(),
            left,
            totalS(),
            plan.effort().moveS());
    return line
        + plan.baselines().stream()
            .map(
                b ->
                    String.format(
                        Locale.ROOT, "; %s %d, %.0f s", b.name(), b.placed(), b.effort().totalS()))
            .collect(Collectors.joining());
  }
}
