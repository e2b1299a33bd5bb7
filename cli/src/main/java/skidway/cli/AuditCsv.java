package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import skidway.audit.AuditReport;
import skidway.audit.Finding;
import skidway.plan.Margin;
import skidway.rules.Rule;

/**
 * Writes an audit's report as comma-separated values, one row a statement, figures in SI units. The
 * first column says which list a row is of.
 */
final class AuditCsv {
  private static final String HEAD =
      "list,where,rule,level,value,bound,limit,unit,free_percent,sentence,source";

  private AuditCsv() {}

  /**
   * @param all every limit of every stack and class of pieces, not only the tightest
   */
  static List<String> lines(AuditReport report, boolean all) {
    List<String> lines = new ArrayList<>(List.of(HEAD));
    report.findings().forEach(finding -> lines.add(finding("finding", finding)));
    report.margins().forEach(margin -> lines.add(margin("tightest", margin)));
    List<Margin> stacks = report.stackMargins();
    (all ? stacks : StackMargins.tightest(stacks)).forEach(m -> lines.add(margin("stack", m)));
    if (all) {
      report.pieceMargins().forEach(m -> lines.add(margin("pieces", m)));
    }
    report.notes().forEach(note -> lines.add(finding("to settle", note)));
    report.remarks().forEach(remark -> lines.add(remark(remark)));
    return lines;
  }

  private static String finding(String list, Finding finding) {
    return Csv.row(
        list,
        finding.where(),
        finding.rule().id(),
        level(finding.rule()),
        Csv.figure(finding.value()),
        "",
        Csv.figure(finding.limit()),
        finding.rule().measure().siUnit(),
        "",
        finding.sentence(),
        finding.rule().source());
  }

  private static String margin(String list, Margin margin) {
    return Csv.row(
        list,
        margin.where(),
        margin.rule().id(),
        level(margin.rule()),
        Csv.figure(margin.value()),
        margin.atLeast() ? "at least" : "at most",
        Csv.figure(margin.limit()),
        margin.rule().measure().siUnit(),
        margin.limit() == 0 ? "" : Csv.figure(100 * margin.share()),
        margin.rule().sentence(),
        margin.rule().source());
  }

  private static String remark(String sentence) {
    return Csv.row("remark", "", "", "", "", "", "", "", "", sentence, "");
  }

  private static String level(Rule rule) {
    return rule.level().name().toLowerCase(Locale.ROOT);
  }
}
