package skidway.sheet;

import skidway.plan.Plan;

/** Writes the bundles without a spot, with the rule that keeps them out. */
final class UnplacedTable {
  private UnplacedTable() {}

  static void write(Markup page, Plan plan, RunningHead head) {
    if (plan.unplaced().isEmpty()) {
      return;
    }
    page.open("section", "id", "without", "class", "alarm").leaf("h2", "Without a spot");
    SheetTable table =
        SheetTable.open(page, head, "without", "Bundle", "What it means here", "Rule");
    for (SameFate fate : SameFate.of(plan.unplaced())) {
      table.openRow("bad").openName("bundle").text(fate.who()).close();
      table.cell("words", fate.sentence());
      Markup rule = table.openCell("source").text(fate.rule().sentence() + " ");
      rule.leaf("code", fate.rule().id()).close();
      table.close();
    }
    table.end();
    page.close().line();
  }
}
