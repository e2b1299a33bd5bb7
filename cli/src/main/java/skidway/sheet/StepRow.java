package skidway.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import skidway.limits.Bearers;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.site.SpotKind;
import skidway.timber.Bundle;

/** Writes one lift of the unloading sheet. */
final class StepRow {
  private final SheetTable table;
  private final Task task;
  private final Set<String> racks;

  StepRow(SheetTable table, Task task, Plan plan) {
    this.table = table;
    this.task = task;
    this.racks =
        plan.stacks().stream()
            .filter(s -> s.spot().kind() == SpotKind.RACK)
            .map(s -> s.spot().id())
            .collect(Collectors.toUnmodifiableSet());
  }

  void write(Step step) {
    boolean rack = racks.contains(step.toId());
    Optional<Bundle> bundle = task.delivery().bundle(step.bundleId());
    table.openRow(step.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    Markup lift = table.openCell("lift");
    lift.leaf("span", "", "class", "box").leaf("b", Integer.toString(step.number())).close();
    Markup name = table.openName("bundle").text(step.bundleId());
    bundle.ifPresent(
        b ->
            name.leaf(
                "small", LoadNames.of(b.loadId()) + ", " + Ordinals.of(b.offOrder()) + " off"));
    name.close();
    table.cell("mass", task.figures().mass(step.massKg()));
    table.cell("do", StepWords.of(step, rack));
    to(step, rack);
    table.cell("bearers", bearers(bundle, rack));
    machine(step);
    table.close();
  }

  private void to(Step step, boolean rack) {
    boolean waits = step.kind() == StepKind.SET_DOWN;
    Markup to = table.openCell("to");
    to.leaf("span", step.toId(), "class", waits ? "plate waiting" : "plate").text(" ");
    to.leaf("span", waits ? "for now" : rack ? "on end" : "tier " + step.tier(), "class", "tier");
    to.close();
  }

  private String bearers(Optional<Bundle> bundle, boolean rack) {
    if (rack || bundle.isEmpty()) {
      return rack ? "none" : "as it needs";
    }
    Bearers bearers = Bearers.under(bundle.get().lengthM());
    return bearers.count() + ", " + task.figures().length(bearers.spacingM()) + " apart";
  }

  private void machine(Step step) {
    double spareKg = step.capacityKg() - step.massKg();
    Markup machine = table.openCell("machine");
    machine.leaf("b", "at " + step.standId()).text(", ");
    machine.leaf("span", "reach " + task.figures().length(step.reachM()));
    machine.empty("br");
    if (spareKg < 0) {
      machine.leaf("strong", task.figures().mass(-spareKg) + " over the chart", "class", "bad");
    } else {
      machine.leaf("span", task.figures().mass(spareKg) + " to spare");
    }
    machine.close();
  }
}
