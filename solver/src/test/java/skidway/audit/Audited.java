package skidway.audit;

import java.util.List;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.testkit.PlanBuilder;

/** Audits a hand-made plan that tells its crew time truly, unless a test says otherwise. */
final class Audited {
  private Audited() {}

  static AuditReport report(Task task, PlanBuilder plan) {
    PlanBuilder honest = plan.effort(Audit.of(task, plan.build(task)).effort());
    return Audit.of(task, honest.build(task));
  }

  static List<String> sentences(Rule rule, AuditReport report) {
    return report.findings().stream().filter(f -> f.rule() == rule).map(Finding::sentence).toList();
  }

  /** What is said of one rule; the plan's crew time is left as it is. */
  static List<String> sentences(Rule rule, Task task, PlanBuilder plan) {
    return sentences(rule, Audit.of(task, plan.build(task)));
  }
}
