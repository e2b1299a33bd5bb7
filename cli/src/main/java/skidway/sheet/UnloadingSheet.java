package skidway.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.timber.Bundle;
import skidway.timber.Load;

/** Writes the unloading sheet: one row a lift, in the order in which bundles come off. */
final class UnloadingSheet {
  private static final Set<StepKind> MOVES = EnumSet.of(StepKind.MOVE, StepKind.SET_ASIDE);

  private UnloadingSheet() {}

  static void write(Markup page, Task task, Plan plan, RunningHead head) {
    page.open("section", "id", "unload").leaf("h2", "Unloading sheet");
    SheetTable table = StepRow.table(page, head);
    StepRow rows = new StepRow(table, task, plan);
    Optional<String> under = Optional.empty();
    boolean moves = false;
    for (Step step : plan.steps()) {
      if (!moves && MOVES.contains(step.kind())) {
        movesHeading(page, table.group());
        moves = true;
      }
      Optional<String> load = load(task, step).or(() -> Optional.of(step.fromId()));
      if (step.kind().offTruck() && !load.equals(under)) {
        heading(page, table.group(), task, load.orElseThrow());
        under = load;
      }
      rows.write(step);
    }
    table.end();
    withoutSpot(page, task, plan);
    page.close().line();
  }

  /** What comes off between what is above and has nowhere to go. */
  static void withoutSpot(Markup page, Task task, Plan plan) {
    if (plan.unplaced().isEmpty()) {
      return;
    }
    List<String> ids = plan.unplaced().stream().map(u -> inOffOrder(task, u.bundleId())).toList();
    page.open("p", "class", "no-spot");
    page.leaf("strong", "Not in this list, because they have no spot: ");
    page.text(String.join("; ", ids));
    page.text(". They come off in their turn; ask the site lead where to, before lifting them.");
    page.close();
  }

  private static String inOffOrder(Task task, String bundleId) {
    return task.delivery()
        .bundle(bundleId)
        .map(
            b ->
                b.id()
                    + ", "
                    + LoadNames.of(b.loadId())
                    + ", "
                    + Ordinals.of(b.offOrder())
                    + " off")
        .orElse(bundleId);
  }

  private static Optional<String> load(Task task, Step step) {
    return task.delivery().bundle(step.bundleId()).map(Bundle::loadId);
  }

  private static void movesHeading(Markup page, SheetTable table) {
    table.openHeading("load");
    page.leaf("span", "Moves before the truck", "class", "name");
    page.leaf("span", "what lies there already; only the top of a stack", "class", "about");
    table.close().close();
    page.line();
  }

  static void heading(Markup page, SheetTable table, Task task, String loadId) {
    List<Load> loads = task.delivery().loads();
    Optional<Load> load = task.delivery().load(loadId);
    int turn = load.map(l -> loads.indexOf(l) + 1).orElse(0);
    List<Bundle> bundles =
        task.delivery().bundles().stream().filter(b -> b.loadId().equals(loadId)).toList();
    String mass = task.figures().mass(bundles.stream().mapToDouble(b -> b.mass().highKg()).sum());
    table.openHeading("load");
    LoadMark.write(page, turn);
    page.leaf("span", LoadNames.of(loadId), "class", "name");
    page.open("span", "class", "about");
    load.ifPresent(
        l -> page.text(Moments.fully(l.arrival()) + ", truck stand " + l.truckStandId() + ", "));
    page.text(bundles.size() + " bundles, at most " + mass).close();
    table.close().close();
    page.line();
  }
}
