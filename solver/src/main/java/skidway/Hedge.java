package skidway;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.job.Job;
import skidway.plan.Plan;
import skidway.rules.Level;
import skidway.rules.Rule;
import skidway.staging.Laying;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;
import skidway.staging.Watcher;

/**
 * Plans a job so that late loads cost little: stages several plans, some for loads on time and some
 * as if they were late, and lets the audit reckon the hours of each in every case. The plan with
 * the lowest expected hours is taken, of equal ones that with the lowest worst; one that breaks a
 * rule when nothing is late never is.
 *
 * <p>A plan is reckoned as it stands: what planning anew would save once a load is late is not
 * counted, nor is the crew's idle time, which no plan changes.
 */
public final class Hedge {
  /** Dice beside those asked for, for plans with loads on time. */
  private static final int MORE_DICE = 2;

  /** Late cases for which a plan is staged, the latest first. */
  private static final int MOST_STAGED_FOR = 3;

  /**
   * A plan that was looked at.
   *
   * @param name what it was staged for
   * @param hoursS crew time in each scenario, person-seconds
   * @param holds whether it breaks no rule in a scenario that the plan without hedge keeps
   */
  public record Candidate(
      String name, Planner.Planned planned, List<Double> hoursS, List<Boolean> holds) {
    public Candidate {
      hoursS = List.copyOf(hoursS);
      holds = List.copyOf(holds);
    }

    /** Expected crew time, all cases equally likely, person-seconds. */
    public double expectedS(List<Scenario> scenarios) {
      double sum = 0;
      int cases = 0;
      for (int i = 0; i < scenarios.size(); i++) {
        sum += hoursS.get(i) * scenarios.get(i).cases();
        cases += scenarios.get(i).cases();
      }
      return sum / cases;
    }

    /** Crew time in the worst case, person-seconds. */
    public double worstS() {
      return hoursS.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    private long misses() {
      return holds.stream().filter(held -> !held).count();
    }
  }

  /**
   * What came of it.
   *
   * @param candidates the plan without hedge first
   * @param chosen one of them
   */
  public record Hedged(List<Scenario> scenarios, List<Candidate> candidates, Candidate chosen) {
    public Hedged {
      scenarios = List.copyOf(scenarios);
      candidates = List.copyOf(candidates);
    }

    public Candidate unhedged() {
      return candidates.get(0);
    }
  }

  private final Job job;
  private final List<Scenario> scenarios;
  private final List<Candidate> candidates = new ArrayList<>();

  private Hedge(Job job, List<Scenario> scenarios) {
    this.job = job;
    this.scenarios = scenarios;
  }

  /** How many cases there are, every lateness with every other. */
  public static long cases(List<Lateness> lates) {
    return lates.stream().mapToLong(Lateness::cases).reduce(1, Math::multiplyExact);
  }

  /** The next revision of a job's plan, not yet written, and what it was compared with. */
  public static Hedged plan(
      Job job, List<Lateness> lates, SearchLimits limits, Watcher watcher, StopButton stop) {
    Hedge hedge = new Hedge(job, Scenario.all(job.task(), lates));
    hedge.stage(limits, watcher, stop);
    Candidate chosen =
        hedge.candidates.stream()
            .filter(hedge::holdsOnTime)
            .min(
                Comparator.comparingInt((Candidate c) -> c.planned().plan().unplaced().size())
                    .thenComparingLong(Candidate::misses)
                    .thenComparingLong(c -> Math.round(c.expectedS(hedge.scenarios)))
                    .thenComparingLong(c -> Math.round(c.worstS())))
            .orElse(hedge.candidates.get(0));
    return new Hedged(hedge.scenarios, hedge.candidates, chosen);
  }

  private void stage(SearchLimits limits, Watcher watcher, StopButton stop) {
    add("loads on time", Planner.plan(job, limits, watcher, stop));
    List<Scenario> late = new ArrayList<>(scenarios);
    late.removeIf(s -> s.task().start().held().isEmpty() && s.names().contains("on time"));
    for (int i = late.size() - 1; i >= Math.max(0, late.size() - MOST_STAGED_FOR); i--) {
      Scenario scenario = late.get(i);
      Plan staged = Planner.plan(job, scenario.task(), limits, watcher, stop).plan();
      Optional<Plan> onTime = Laying.of(job.task(), staged, first().plan().baselines());
      onTime.ifPresent(plan -> add(lastOf(scenario), labelled(plan)));
    }
    for (int dice = 1; dice <= MORE_DICE; dice++) {
      SearchLimits other = new SearchLimits(limits.seed() + dice, limits.calculations());
      add("loads on time, seed " + other.seed(), Planner.plan(job, other, watcher, stop));
    }
  }

  private static String lastOf(Scenario scenario) {
    return scenario.names().get(scenario.cases() - 1);
  }

  private Planner.Planned first() {
    return candidates.get(0).planned();
  }

  private Planner.Planned labelled(Plan plan) {
    Plan first = first().plan();
    Plan labelled = plan.labelled(first.revision(), first.inputs(), first.previous(), 0);
    AuditReport audit = Audit.of(job.task(), labelled);
    return new Planner.Planned(labelled.withMargins(audit.margins()), audit);
  }

  private void add(String name, Planner.Planned planned) {
    List<Double> hoursS = new ArrayList<>();
    List<Boolean> holds = new ArrayList<>();
    for (Scenario scenario : scenarios) {
      AuditReport audit = Audit.of(scenario.task(), planned.plan());
      hoursS.add(audit.effort().totalS());
      holds.add(audit.findings().stream().allMatch(f -> toldOtherwise(f.rule())));
    }
    candidates.add(new Candidate(name, planned, hoursS, holds));
  }

  /** Bundles without a spot are counted by themselves; hours are what is compared here. */
  private static boolean toldOtherwise(Rule rule) {
    return rule == Rule.PLACED || rule.level() == Level.SOFT;
  }

  private boolean holdsOnTime(Candidate candidate) {
    return candidate.planned().audit().findings().stream().allMatch(f -> f.rule() == Rule.PLACED);
  }
}
