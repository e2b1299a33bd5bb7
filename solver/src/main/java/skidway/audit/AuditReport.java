package skidway.audit;

import java.util.List;
import skidway.plan.Effort;
import skidway.plan.Margin;

/**
 * What the audit found.
 *
 * @param findings every broken rule, in the order of the rules, then by place
 * @param margins for each rule that can be measured the tightest place, also where it is kept
 * @param remarks what could not be checked, and what is the site's own matter and no plan's fault
 * @param effort the crew time as the audit computes it
 */
public record AuditReport(
    List<Finding> findings, List<Margin> margins, List<String> remarks, Effort effort) {
  public AuditReport {
    findings = List.copyOf(findings);
    margins = List.copyOf(margins);
    remarks = List.copyOf(remarks);
  }

  /** Whether no rule is broken. */
  public boolean clean() {
    return findings.isEmpty();
  }
}
