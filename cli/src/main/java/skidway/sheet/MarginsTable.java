package skidway.sheet;

import java.util.List;
import skidway.plan.Margin;
import skidway.plan.Task;
import skidway.rules.Rule;

/** Writes how near the plan comes to each limit, and where the limit comes from. */
final class MarginsTable {
  private MarginsTable() {}

  static void write(Markup page, Task task, List<Margin> margins, RunningHead head) {
    page.open("section", "id", "limits").leaf("h2", "Tightest limits");
    SheetTable table =
        SheetTable.open(
            page, head, "limits", "Rule", "Tightest at", "Plan", "Limit", "Free", "Source");
    margins.forEach(margin -> row(table, new MarginWords(margin, task.figures())));
    table.end();
    page.close().line();
  }

  private static void row(SheetTable table, MarginWords words) {
    Margin margin = words.margin();
    Rule rule = margin.rule();
    table.openRow(words.broken() ? "bad" : "fine");
    table.openName("rule").text(rule.sentence()).leaf("code", rule.id()).close();
    table.cell("where", margin.where());
    table.cell("figure", words.value());
    table.cell("figure", (margin.atLeast() ? "at least " : "at most ") + words.limit());
    table.cell("figure", words.broken() ? "broken" : words.free());
    table.cell("source", MarginWords.source(rule)).close();
  }
}
