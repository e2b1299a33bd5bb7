package skidway;

import java.util.Set;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.job.History;
import skidway.job.Job;
import skidway.plan.Baseline;
import skidway.plan.Plan;
import skidway.rules.Level;
import skidway.rules.Rule;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;

/**
 * What comes of a plan when loads are as late as a scenario says.
 *
 * @param hoursS crew time with the rest planned anew where that takes less, person-seconds
 * @param unchangedS crew time with the plan carried out as it stands, person-seconds
 * @param holds whether no rule is broken and no more bundles are left without a spot than on time,
 *     planned anew if need be
 */
public record LateCase(double hoursS, double unchangedS, boolean holds) {
  /** Planning anew has this share of the plan's own effort. */
  private static final int SHARE = 100;

  /**
   * The outcome. Planning anew saves what the new plan takes less than changing nothing; where
   * changing nothing cannot be carried out, or nothing lies there yet, the new plan's own hours
   * tell.
   */
  static LateCase of(
      Job job, Planner.Planned planned, Scenario scenario, SearchLimits limits, StopButton stop) {
    AuditReport audit = Audit.of(scenario.task(), planned.plan());
    double unchangedS = audit.effort().totalS();
    boolean stands = keepsRules(audit);
    if (LateLoad.late(job.task(), scenario).isEmpty()) {
      return new LateCase(unchangedS, unchangedS, stands);
    }
    History history = LateLoad.of(job, planned.plan(), scenario);
    SearchLimits few = new SearchLimits(limits.seed(), Math.max(1, limits.calculations() / SHARE));
    Planner.Planned anew = Planner.replan(history, Set.of(), few, (p, d, s) -> {}, stop);
    boolean holds = keepsRules(anew.audit()) && leavesNoMore(anew.plan(), planned.plan());
    if (!holds) {
      return new LateCase(unchangedS, unchangedS, stands);
    }
    double savedS = savedS(history, anew.plan(), unchangedS);
    return new LateCase(unchangedS - savedS, unchangedS, true);
  }

  private static double savedS(History history, Plan anew, double unchangedS) {
    double anewS = anew.effort().totalS();
    if (history.progress().lying().isEmpty()) {
      return Math.max(0, unchangedS - anewS);
    }
    return anew.baselines().stream()
        .filter(baseline -> baseline.name().equals(Baseline.AS_BEFORE))
        .filter(before -> before.placed() >= placed(anew, history))
        .mapToDouble(before -> before.effort().totalS() - anewS)
        .findFirst()
        .orElse(0);
  }

  private static int placed(Plan plan, History history) {
    return history.remaining(Set.of()).delivery().bundles().size() - plan.unplaced().size();
  }

  private static boolean leavesNoMore(Plan anew, Plan planned) {
    return anew.unplaced().size() <= planned.unplaced().size();
  }

  /** Bundles without a spot are counted by themselves; hours are what is compared here. */
  private static boolean keepsRules(AuditReport audit) {
    return audit.findings().stream()
        .allMatch(f -> f.rule() == Rule.PLACED || f.rule().level() == Level.SOFT);
  }
}
