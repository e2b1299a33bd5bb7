package skidway.sheet;

import skidway.plan.Plan;
import skidway.plan.Unplaced;

/** Writes the bundles without a spot, with the rule that keeps each out. */
final class UnplacedTable {
  private UnplacedTable() {}

  static void write(Markup page, Plan plan, RunningHead head) {
    if (plan.unplaced().isEmpty()) {
      return;
    }
    page.open("section", "id", "without", "class", "alarm").leaf("h2", "Without a spot");
    SheetTable table =
        SheetTable.open(page, head, "without", "Bundle", "What it means here", "Rule");
    for (Unplaced bundle : plan.unplaced()) {
      table.openRow("bad").openName("bundle").text(bundle.bundleId()).close();
      table.cell("words", bundle.sentence());
      Markup rule = table.openCell("source").text(bundle.rule().sentence() + " ");
      rule.leaf("code", bundle.rule().id()).close();
      table.close();
    }
    table.end();
    page.close().line();
  }
}
