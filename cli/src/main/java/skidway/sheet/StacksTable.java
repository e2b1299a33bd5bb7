package skidway.sheet;

import java.util.List;
import skidway.plan.Margin;
import skidway.plan.Task;

/** Writes what stands where when all is unloaded: each spot with its tiers, mass and load below. */
final class StacksTable {
  private StacksTable() {}

  /**
   * @param margins what an audit found for each stack
   */
  static void write(
      Markup page, Task task, List<StackView> stacks, List<Margin> margins, RunningHead head) {
    page.open("section", "id", "stacks").leaf("h2", "Stacks");
    SheetTable table =
        SheetTable.open(
            page,
            head,
            "stacks",
            "Spot",
            "From top to bottom",
            "Weighs at most",
            "Load below / allowed",
            "Open side");
    stacks.forEach(stack -> row(table, task, stack, margins));
    table.end();
    page.close().line();
  }

  private static void row(SheetTable table, Task task, StackView stack, List<Margin> margins) {
    table.openRow(stack.rack() ? "rack" : "stack");
    table.openName("spot").leaf("span", stack.spot().id(), "class", "plate").close();
    Markup cell = table.openCell("tiers").open("ol", "class", stack.rack() ? "on-end" : "piled");
    for (Tier tier : stack.rack() ? stack.tiers() : stack.fromTheTop()) {
      tier(cell, task, tier);
    }
    cell.close().close();
    table.cell("figure", task.figures().mass(stack.massKg()));
    below(table, task, stack, margins);
    String side = Compass.name(stack.spot().towardsOpenSide(), task.site().northDeg());
    table.cell("side", side + ", " + stack.spot().zoneId()).close();
  }

  private static void tier(Markup cell, Task task, Tier tier) {
    cell.open("li");
    LoadMark.write(cell, tier.loadTurn());
    cell.leaf("b", tier.bundleId());
    tier.bundle()
        .map(
            b -> task.figures().length(b.lengthM()) + ", " + task.figures().mass(b.mass().highKg()))
        .ifPresent(about -> cell.leaf("small", about));
    cell.close();
  }

  private static void below(SheetTable table, Task task, StackView stack, List<Margin> margins) {
    LoadBelow load = LoadBelow.of(task, stack, margins);
    Markup cell = table.openCell(load.tooMuch() ? "figure bad" : "figure");
    cell.text(load.planned() + " / " + load.allowed());
    if (load.tooMuch()) {
      cell.text(" ").leaf("strong", "too much");
    }
    cell.close();
  }
}
