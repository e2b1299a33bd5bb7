package skidway.sheet;

import java.util.Locale;
import java.util.stream.Collectors;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.rules.Rule;

/** Writes how near the plan comes to each limit, and where the limit comes from. */
final class MarginsTable {
  private MarginsTable() {}

  static void write(Markup page, Task task, Plan plan, RunningHead head) {
    page.open("section", "id", "limits").leaf("h2", "Tightest limits");
    SheetTable table =
        SheetTable.open(
            page, head, "limits", "Rule", "Tightest at", "Plan", "Limit", "Left", "Source");
    plan.margins().forEach(margin -> row(table, task, margin));
    table.end();
    page.close().line();
  }

  private static void row(SheetTable table, Task task, Margin margin) {
    Rule rule = margin.rule();
    boolean broken = margin.share() < 0;
    table.openRow(broken ? "bad" : "fine");
    table.openName("rule").text(rule.sentence()).leaf("code", rule.id()).close();
    table.cell("where", margin.where());
    table.cell("figure", task.figures().of(rule.measure(), margin.value()));
    String bound = margin.atLeast() ? "at least " : "at most ";
    table.cell("figure", bound + task.figures().of(rule.measure(), margin.limit()));
    table.cell("figure", broken ? "broken, " + left(task, margin) : left(task, margin));
    table.cell("source", source(rule)).close();
  }

  /** In percent of the limit, or as it is where the limit is nothing. */
  private static String left(Task task, Margin margin) {
    return margin.limit() == 0
        ? task.figures().of(margin.rule().measure(), margin.share())
        : String.format(Locale.ROOT, "%.0f %%", 100 * margin.share());
  }

  /** The rule's own source, then those of the numbers in it. */
  private static String source(Rule rule) {
    String numbers =
        rule.settings().stream()
            .map(s -> s.key() + ": " + s.flag().words() + ", " + s.source())
            .collect(Collectors.joining("; "));
    return numbers.isEmpty() ? rule.source() : rule.source() + ". " + numbers;
  }
}
