package skidway.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.sheet.ProofWords;
import skidway.sheet.SameFate;
import skidway.sheet.Shopping;
import skidway.units.Figures;

/**
 * Writes down what a plan amounts to: bundles placed, hours against the baselines, tightest
 * margins, what to have on site.
 */
final class PlanSummary {
  private final Task task;
  private final Plan plan;
  private final Figures figures;

  PlanSummary(Task task, Plan plan) {
    this.task = task;
    this.plan = plan;
    this.figures = task.figures();
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    int delivered = task.delivery().bundles().size();
    long setDowns = plan.steps().stream().filter(s -> s.kind().waits()).count();
    lines.add(
        String.format(
            Locale.ROOT,
            "%s, revision %d: %d of %d bundles placed, in %d stacks, with %d set-downs",
            plan.jobName(),
            plan.revision(),
            delivered - plan.unplaced().size(),
            delivered,
            plan.stacks().size(),
            setDowns));
    lines.add("");
    lines.addAll(hours().lines());
    lines.addAll(savings());
    for (String sentence : ProofWords.sentences(plan)) {
      lines.addAll(Wrap.sentence(sentence, 0, 2));
    }
    lines.add("");
    lines.add("Tightest margins");
    lines.addAll(margins().lines());
    lines.add("");
    lines.add("To have on site");
    for (String line : Shopping.of(task, plan).lines()) {
      lines.addAll(Wrap.sentence(line, 2, 4));
    }
    lines.addAll(ChangedLimits.lines(task));
    if (!plan.unplaced().isEmpty()) {
      lines.add("");
      lines.add("Without a spot");
      for (SameFate fate : SameFate.of(plan.unplaced())) {
        lines.add("  " + fate.sentence());
        lines.add("    binding: " + fate.rule().id() + " - " + fate.rule().sentence());
      }
    }
    return lines;
  }

  private TextTable hours() {
    List<String> heads =
        new ArrayList<>(
            List.of(
                "crew hours", ">placed", ">carry", ">pick", ">rehandle", ">inside", ">set-down"));
    heads.add(task.site().byHand() ? ">off truck" : ">machine");
    heads.addAll(lifted() ? List.of(">moves", ">all") : List.of(">all"));
    TextTable table = new TextTable(heads.toArray(String[]::new));
    int delivered = task.delivery().bundles().size();
    table.row(row("this plan", delivered - plan.unplaced().size(), plan.effort()));
    for (Baseline baseline : plan.baselines()) {
      table.row(row(baseline.name(), baseline.placed(), baseline.effort()));
    }
    return table;
  }

  private String[] row(String name, int placed, Effort effort) {
    List<String> cells =
        new ArrayList<>(
            List.of(
                name,
                placed + " of " + task.delivery().bundles().size(),
                figures.hours(effort.carryS()),
                figures.hours(effort.pickS()),
                figures.hours(effort.rehandleS()),
                inside(effort),
                figures.hours(effort.setDownS()),
                figures.hours(effort.machineS() + effort.offTruckS())));
    if (lifted()) {
      cells.add(figures.hours(effort.moveS()));
    }
    cells.add(figures.hours(effort.totalS()));
    return cells.toArray(String[]::new);
  }

  /** A plan from before this was counted says nothing of it. */
  private String inside(Effort effort) {
    return effort.insideS().isPresent() ? figures.hours(effort.insideS().getAsDouble()) : "?";
  }

  /** Whether something lay there when the plan was made. */
  private boolean replanned() {
    return !task.start().stacks().isEmpty();
  }

  /** Whether something lay there that a machine can lift. */
  private boolean lifted() {
    return replanned() && !task.site().byHand();
  }

  private List<String> savings() {
    int placed = task.delivery().bundles().size() - plan.unplaced().size();
    if (placed == 0) {
      return List.of();
    }
    return plan.baselines().stream()
        .max(Comparator.comparingInt(Baseline::placed).thenComparing(b -> -b.effort().totalS()))
        .map(best -> saving(best, placed))
        .stream()
        .toList();
  }

  private String saving(Baseline best, int placed) {
    if (replanned()) {
      return best.placed() < placed
          ? "No way to go on without a new plan places as many bundles."
          : comparison(best);
    }
    if (best.placed() < placed) {
      return String.format(
          Locale.ROOT,
          "Without a plan no more than %d bundles find a legal spot ('%s').",
          best.placed(),
          best.name());
    }
    if (best.placed() > placed) {
      return String.format(
          Locale.ROOT,
          "'%s' places more bundles, but nobody checked that it can be walked through.",
          best.name());
    }
    double saved = best.effort().totalS() - plan.effort().totalS();
    if (saved < 0) {
      return String.format(
          Locale.ROOT,
          "Takes %s more than '%s', which is not held to open paths and places to wait.",
          figures.hours(-saved),
          best.name());
    }
    return String.format(
        Locale.ROOT,
        "Saves %s, %.0f %% of what the better of the two takes ('%s').",
        figures.hours(saved),
        100 * saved / best.effort().totalS(),
        best.name());
  }

  /** Of the ways to go on from what lies, the best one. */
  private String comparison(Baseline best) {
    double saved = best.effort().totalS() - plan.effort().totalS();
    return String.format(
        Locale.ROOT,
        saved < 30
            ? "No better way was found than '%2$s'."
            : "Saves %s against the best other way ('%s').",
        figures.hours(saved),
        best.name());
  }

  private TextTable margins() {
    return MarginTable.of(plan.margins().stream().sorted(byShare()).toList(), figures);
  }

  private static Comparator<Margin> byShare() {
    return Comparator.comparingDouble(Margin::share).thenComparing(Margin::rule);
  }
}
