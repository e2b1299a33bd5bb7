package skidway.audit;

import java.util.List;
import skidway.rules.Rule;

/** Picks the sentences of one rule out of a report. */
final class Sentences {
  private Sentences() {}

  static List<String> of(Rule rule, AuditReport report) {
    return report.findings().stream().filter(f -> f.rule() == rule).map(Finding::sentence).toList();
  }
}
