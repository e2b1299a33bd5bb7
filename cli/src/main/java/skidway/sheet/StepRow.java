package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.Reason;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;
import skidway.units.Figures;

/** Writes one lift of the unloading sheet. */
final class StepRow {
  private final SheetTable table;
  private final Task task;
  private final List<StackView> stacks;
  private final List<Reason> reasons;

  StepRow(SheetTable table, Task task, Plan plan) {
    this.table = table;
    this.task = task;
    this.reasons = plan.reasons();
    this.stacks = StackView.of(task, plan);
  }

  /** The table that lifts are written into, open for the first. */
  static SheetTable table(Markup page, RunningHead head) {
    return SheetTable.open(
        page,
        head,
        "lifts",
        "Lift",
        "Bundle",
        "Weighs at most",
        "What to do",
        "To",
        "Bearers",
        "Machine");
  }

  void write(Step step) {
    Optional<StackView> stack = StackView.broughtTo(stacks, step);
    boolean rack = stack.filter(StackView::rack).isPresent();
    Optional<Bundle> bundle = task.delivery().bundle(step.bundleId());
    Optional<String> advice = advice(step);
    StepKind look = step.kind().waits() ? StepKind.SET_DOWN : step.kind();
    String kind = look.name().toLowerCase(Locale.ROOT).replace('_', '-');
    table.openRow(advice.isPresent() ? kind + " noted" : kind);
    Markup lift = table.openCell("lift");
    lift.leaf("span", "", "class", "box").leaf("b", Integer.toString(step.number())).close();
    Markup name = table.openName("bundle").text(step.bundleId());
    bundle.ifPresent(b -> name.leaf("small", origin(step, b)));
    name.close();
    table.cell("mass", task.figures().mass(step.massKg()));
    Markup words = table.openCell("do").text(StepWords.of(step, rack));
    if (stack.filter(s -> RisesHigh.from(step, s, task.settings())).isPresent()) {
      words.text(" ").leaf("strong", RisesHigh.words(task), "class", "heed");
    }
    words.close();
    to(step, rack);
    bearers(step, rack);
    machine(step);
    table.close();
    advice.ifPresent(a -> table.note("To spare the joists under " + step.toId() + ": " + a));
  }

  /** How its bearers would spare the joists, told when they are laid. */
  private Optional<String> advice(Step step) {
    return reasons.stream()
        .filter(r -> step.tier() == 1 && r.bundleId().equals(step.bundleId()))
        .filter(r -> r.spotId().equals(step.toId()))
        .flatMap(r -> r.bearerAdvice().stream())
        .findFirst();
  }

  private String origin(Step step, Bundle bundle) {
    return task.start().lies(bundle.id())
        ? "lies at " + step.fromId()
        : LoadNames.of(bundle.loadId()) + ", " + Ordinals.of(bundle.offOrder()) + " off";
  }

  private void to(Step step, boolean rack) {
    boolean waits = step.kind().waits();
    Markup to = table.openCell("to");
    to.leaf("span", step.toId(), "class", waits ? "plate waiting" : "plate").text(" ");
    to.leaf("span", waits ? "for now" : rack ? "on end" : "tier " + step.tier(), "class", "tier");
    to.close();
  }

  private void bearers(Step step, boolean rack) {
    Markup cell = table.openCell("bearers");
    List<String> parts = bearers(step.bearers(), rack, task.figures());
    for (int i = 0; i < parts.size(); i++) {
      cell.text(i == 0 ? "" : " ").leaf("span", parts.get(i) + (i < parts.size() - 1 ? "," : ""));
    }
    cell.close();
  }

  /** In parts between which a narrow column may break the line. */
  static List<String> bearers(BearerRow row, boolean rack, Figures figures) {
    if (row.count() == 0) {
      return List.of(rack ? "on the rack's rails" : "as it needs");
    }
    List<String> parts = new ArrayList<>();
    parts.add(row.count() + ", " + figures.length(row.spacingM()) + " apart");
    parts.add(figures.length(row.lengthM()) + " long");
    parts.add("first " + figures.length(row.endM()) + " in");
    return parts;
  }

  private void machine(Step step) {
    double spareKg = step.capacityKg() - step.massKg();
    Markup machine = table.openCell("machine");
    if (!step.pickStandId().isEmpty()) {
      machine.leaf("b", "from " + step.pickStandId()).text(" ");
    }
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
