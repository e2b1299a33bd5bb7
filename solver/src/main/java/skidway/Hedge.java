package skidway;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.job.Job;
import skidway.plan.Heeded;
import skidway.plan.Plan;
import skidway.rules.Rule;
import skidway.staging.Laying;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;
import skidway.staging.Watcher;

/**
 * Plans a job so that late loads cost little: stages several plans, some for loads on time and some
 * as if they were late, and reckons the hours of each in every case. The plan with the lowest
 * expected hours is taken, of equal ones that with the lowest worst; one that breaks a rule when
 * nothing is late never is.
 *
 * <p>In a late case the rest is planned anew at the hour at which the load should have come, as a
 * restage would with little effort: {@link LateCase}. The crew's idle time, which no plan changes,
 * is not counted.
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
   * @param cases what comes of it in each scenario
   */
  public record Candidate(String name, Planner.Planned planned, List<LateCase> cases) {
    public Candidate {
      cases = List.copyOf(cases);
    }

    /** Expected crew time, all cases equally likely, person-seconds. */
    public double expectedS(List<Scenario> scenarios) {
      return expectedS(scenarios, LateCase::hoursS);
    }

    /** The same if the plan were carried out as it stands, whatever is late. */
    public double unchangedS(List<Scenario> scenarios) {
      return expectedS(scenarios, LateCase::unchangedS);
    }

    private double expectedS(List<Scenario> scenarios, ToDoubleFunction<LateCase> hoursS) {
      double sum = 0;
      int all = 0;
      for (int i = 0; i < scenarios.size(); i++) {
        sum += hoursS.applyAsDouble(cases.get(i)) * scenarios.get(i).cases();
        all += scenarios.get(i).cases();
      }
      return sum / all;
    }

    /** Crew time in the worst case, person-seconds. */
    public double worstS() {
      return cases.stream().mapToDouble(LateCase::hoursS).max().orElse(0);
    }

    private long misses() {
      return cases.stream().filter(late -> !late.holds()).count();
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
  private final SearchLimits limits;
  private final StopButton stop;
  private final List<Candidate> candidates = new ArrayList<>();

  private Hedge(Job job, List<Scenario> scenarios, SearchLimits limits, StopButton stop) {
    this.job = job;
    this.scenarios = scenarios;
    this.limits = limits;
    this.stop = stop;
  }

  /** How many cases there are, every lateness with every other. */
  public static long cases(List<Lateness> lates) {
    return lates.stream().mapToLong(Lateness::cases).reduce(1, Math::multiplyExact);
  }

  /** The next revision of a job's plan, not yet written, and what it was compared with. */
  public static Hedged plan(
      Job job, List<Lateness> lates, SearchLimits limits, Watcher watcher, StopButton stop) {
    Hedge hedge = new Hedge(job, Scenario.all(job.task(), lates), limits, stop);
    hedge.stage(watcher);
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

  private void stage(Watcher watcher) {
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
    Plan labelled = plan.labelled(first.revision(), first.inputs(), first.previous(), Heeded.NONE);
    AuditReport audit = Audit.of(job.task(), labelled);
    return new Planner.Planned(labelled.withMargins(audit.margins()), audit);
  }

  private void add(String name, Planner.Planned planned) {
    List<LateCase> cases =
        scenarios.stream().map(s -> LateCase.of(job, planned, s, limits, stop)).toList();
    candidates.add(new Candidate(name, planned, cases));
  }

  private boolean holdsOnTime(Candidate candidate) {
    return candidate.planned().audit().findings().stream().allMatch(f -> f.rule() == Rule.PLACED);
  }
}
