package skidway.sheet;

import java.util.List;
import java.util.Locale;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Task;

/** Writes the plan's crew time by kind, next to what a crew would do without a plan. */
final class HoursTable {
  private final SheetTable table;
  private final Task task;
  private final double mostS;

  private HoursTable(SheetTable table, Task task, double mostS) {
    this.table = table;
    this.task = task;
    this.mostS = mostS;
  }

  static void write(Markup page, Task task, Plan plan, RunningHead head) {
    page.open("section", "id", "hours").leaf("h2", "Crew time");
    SheetTable table =
        SheetTable.open(
            page,
            head,
            "hours",
            "Way of working",
            "Carry",
            "Pick",
            "Rehandle",
            "Inside bundles",
            "Set down",
            task.site().byHand() ? "Off the truck" : "Machine",
            "Together",
            "Bundles with a spot");
    double mostS =
        plan.baselines().stream()
            .mapToDouble(b -> b.effort().totalS())
            .reduce(plan.effort().totalS(), Math::max);
    HoursTable rows = new HoursTable(table, task, mostS);
    long placed = plan.stacks().stream().mapToLong(s -> s.bundleIds().size()).sum();
    rows.row("this plan", "", plan.effort(), placed);
    for (Baseline baseline : plan.baselines()) {
      rows.row(baseline.name(), baseline.sentence(), baseline.effort(), baseline.placed());
    }
    table.end();
    List<String> proof = ProofWords.sentences(plan);
    if (!proof.isEmpty()) {
      page.leaf("p", String.join(" ", proof));
    }
    page.leaf(
        "p",
        "Hours of all people added up. The times behind them are settings of the job. Inside"
            + " bundles: moving pieces aside that lie over one of a lower layer needed earlier.");
    page.close().line();
  }

  private void row(String name, String sentence, Effort effort, long placed) {
    table.openRow(sentence.isEmpty() ? "plan" : "baseline");
    Markup way = table.openName("way").text(name);
    if (!sentence.isEmpty()) {
      way.leaf("small", sentence);
    }
    way.close();
    figure(effort.carryS());
    figure(effort.pickS());
    figure(effort.rehandleS());
    table.cell(
        "figure",
        effort.insideS().isPresent()
            ? task.figures().hours(effort.insideS().getAsDouble())
            : "not counted");
    figure(effort.setDownS());
    figure(effort.machineS() + effort.offTruckS());
    Markup together = table.openCell("figure together");
    together.leaf("b", task.figures().hours(effort.totalS()));
    double share = mostS > 0 ? effort.totalS() / mostS : 0;
    String width = String.format(Locale.ROOT, "width:%.0f%%", 100 * share);
    together.open("span", "class", "bar").leaf("i", "", "style", width).close().close();
    table.cell("figure", Long.toString(placed)).close();
  }

  private void figure(double personS) {
    table.cell("figure", task.figures().hours(personS));
  }
}
