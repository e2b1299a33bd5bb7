package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import skidway.plan.Effort;
import skidway.plan.Margin;

/**
 * What the audit found.
 *
 * @param findings every broken rule, in the order of the rules, then by place; after those of the
 *     plan those of its waves
 * @param margins for each rule that can be measured the tightest place, also where it is kept
 * @param remarks what could not be checked, and what is the site's own matter and no plan's fault
 * @param effort the crew time as the audit computes it
 * @param stackMargins for each stack and each rule that can be measured on it the tightest margin,
 *     stack by stack in the plan's order; then for each waiting place how hard a bundle presses
 *     there; then for each pile of waves the same as for a stack; where is the spot's code
 * @param pieceMargins for each class of pieces what carrying one asks of people; where is the class
 * @param notes what no plan can settle and people must
 */
public record AuditReport(
    List<Finding> findings,
    List<Margin> margins,
    List<String> remarks,
    Effort effort,
    List<Margin> stackMargins,
    List<Margin> pieceMargins,
    List<Finding> notes) {
  public AuditReport {
    findings = List.copyOf(findings);
    margins = List.copyOf(margins);
    remarks = List.copyOf(remarks);
    stackMargins = List.copyOf(stackMargins);
    pieceMargins = List.copyOf(pieceMargins);
    notes = List.copyOf(notes);
  }

  /** The same with more findings after these, and with other margins. */
  AuditReport with(List<Finding> more, List<Margin> tightest, List<Margin> byPlace) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    return new AuditReport(all, tightest, remarks, effort, byPlace, pieceMargins, notes);
  }

  /** Whether no rule is broken. */
  public boolean clean() {
    return findings.isEmpty();
  }
}
