package skidway.sheet;

import java.util.List;
import java.util.Optional;
import skidway.plan.Task;
import skidway.site.Zone;

/** Writes what stands where when all is unloaded: each spot with its tiers, mass and floor load. */
final class StacksTable {
  private StacksTable() {}

  static void write(Markup page, Task task, List<StackView> stacks, RunningHead head) {
    page.open("section", "id", "stacks").leaf("h2", "Stacks");
    SheetTable table =
        SheetTable.open(
            page,
            head,
            "stacks",
            "Spot",
            "From top to bottom",
            "Weighs",
            "Load below / allowed",
            "Open side");
    stacks.forEach(stack -> row(table, task, stack));
    table.end();
    page.close().line();
  }

  private static void row(SheetTable table, Task task, StackView stack) {
    table.openRow(stack.rack() ? "rack" : "stack");
    table.openName("spot").leaf("span", stack.spot().id(), "class", "plate").close();
    Markup cell = table.openCell("tiers").open("ol", "class", stack.rack() ? "on-end" : "piled");
    for (Tier tier : stack.rack() ? stack.tiers() : stack.fromTheTop()) {
      tier(cell, task, tier);
    }
    cell.close().close();
    table.cell("figure", task.figures().mass(stack.massKg()));
    floor(table, task, stack);
    String side = Compass.name(stack.spot().towardsOpenSide(), task.site().northDeg());
    table.cell("side", side + ", " + stack.spot().zoneId()).close();
  }

  private static void tier(Markup cell, Task task, Tier tier) {
    cell.open("li");
    LoadMark.write(cell, tier.loadTurn());
    cell.leaf("b", tier.bundleId());
    tier.bundle()
        .map(b -> task.figures().length(b.lengthM()) + ", " + task.figures().mass(b.massKg()))
        .ifPresent(about -> cell.leaf("small", about));
    cell.close();
  }

  private static void floor(SheetTable table, Task task, StackView stack) {
    Optional<Double> loadKpa = FloorLoad.kpa(stack, task.settings());
    Optional<Double> allowedKpa = task.site().zone(stack.spot().zoneId()).map(Zone::allowedKpa);
    String load = loadKpa.map(task.figures()::pressure).orElse("unknown");
    String allowed = allowedKpa.map(task.figures()::pressure).orElse("unknown");
    boolean over =
        loadKpa.isPresent() && allowedKpa.isPresent() && loadKpa.get() > allowedKpa.get() + 1e-6;
    Markup cell = table.openCell(over ? "figure bad" : "figure");
    cell.text(load + " / " + allowed);
    if (over) {
      cell.text(" ").leaf("strong", "too much");
    }
    cell.close();
  }
}
