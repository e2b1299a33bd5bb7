package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;
import skidway.units.Figures;

/**
 * Writes the unloading sheet of a site without a machine: one row a timber, bundle by bundle as
 * they come off, each from its top layer down.
 */
final class HandUnloadingSheet {
  private final Markup page;
  private final SheetTable table;
  private final Task task;
  private final Team team;
  private final List<StackView> stacks;
  private int turn;

  private HandUnloadingSheet(Markup page, SheetTable table, Task task, Plan plan) {
    this.page = page;
    this.table = table;
    this.task = task;
    this.team = new Team(task.settings());
    this.stacks = StackView.of(task, plan);
  }

  static void write(Markup page, Task task, Plan plan, RunningHead head) {
    page.open("section", "id", "unload").leaf("h2", "Unloading sheet, by hand");
    lead(page, task, plan);
    SheetTable table =
        SheetTable.open(
            page,
            head,
            "pulls carried",
            "Off",
            "Piece",
            "Spot",
            "Tier",
            "Layer from below",
            "Weighs at most",
            "People");
    HandUnloadingSheet sheet = new HandUnloadingSheet(page, table, task, plan);
    String under = "";
    for (Step step : plan.steps()) {
      Optional<Bundle> bundle = task.delivery().bundle(step.bundleId());
      if (!step.fromId().equals(under)) {
        under = step.fromId();
        UnloadingSheet.heading(page, table.group(), task, under);
      }
      bundle.ifPresent(b -> sheet.bundle(step, b));
    }
    table.end();
    UnloadingSheet.withoutSpot(page, task, plan);
    page.close().line();
  }

  /** All timbers that people carry off the trucks. */
  static List<Piece> carried(Task task, Plan plan) {
    return plan.steps().stream()
        .flatMap(step -> task.delivery().bundle(step.bundleId()).stream())
        .flatMap(bundle -> bundle.pieces().stream())
        .toList();
  }

  private static void lead(Markup page, Task task, Plan plan) {
    Team team = new Team(task.settings());
    page.open("ul", "class", "lead");
    page.leaf(
        "li",
        "Timbers come off in this order: bundle by bundle, each from its top layer down. What comes"
            + " off first is laid lowest, so a bundle lies upside down in its stack.");
    page.leaf("li", team.heed(task.figures()));
    long devices = carried(task, plan).stream().filter(team::needsDevice).count();
    if (devices > 0) {
      String words =
          (devices == 1
                  ? "1 timber is too heavy for people: nobody lifts it by hand."
                  : devices + " timbers are too heavy for people: nobody lifts them by hand.")
              + " Have a lifting device here before the truck is. The hours count "
              + team.mostPeople()
              + " people for each.";
      page.open("li").leaf("strong", words, "class", "heed").close();
    }
    page.close();
  }

  /** A heading that tells where the bundle goes and on what, then its timbers. */
  private void bundle(Step step, Bundle bundle) {
    Optional<StackView> stack = StackView.broughtTo(stacks, step);
    boolean rack = stack.filter(StackView::rack).isPresent();
    table.group().openHeading("wall");
    page.leaf("span", bundle.id(), "class", "name");
    page.open("span", "class", "about");
    page.text(
        String.join(
            "; ",
            Ordinals.of(bundle.offOrder()) + " off",
            Figures.counted(bundle.packed().size(), "piece"),
            "at most " + task.figures().mass(step.massKg()),
            laid(step, rack)));
    page.close();
    if (stack.filter(s -> RisesHigh.from(step, s, task.settings())).isPresent()) {
      page.text(" ").leaf("strong", RisesHigh.words(task), "class", "heed");
    }
    table.close().close();
    page.line();
    downwards(bundle).forEach(packed -> row(step, rack, bundle, packed));
  }

  private String laid(Step step, boolean rack) {
    if (rack) {
      return "stand its pieces on end in " + step.toId();
    }
    String bearers = String.join(", ", StepRow.bearers(step.bearers(), false, task.figures()));
    return "tier " + step.tier() + " of " + step.toId() + "; bearers first: " + bearers;
  }

  /** Its timbers from the top layer down, within a layer as the packing list has them. */
  private static List<PackedPiece> downwards(Bundle bundle) {
    List<PackedPiece> pieces = new ArrayList<>(bundle.packed());
    pieces.sort(Comparator.comparingInt(PackedPiece::layer).reversed());
    return pieces;
  }

  private void row(Step step, boolean rack, Bundle bundle, PackedPiece packed) {
    Piece piece = packed.piece();
    table.openRow("pull");
    Markup off = table.openCell("turn");
    off.leaf("span", "", "class", "box").leaf("b", Integer.toString(++turn)).close();
    Markup name = table.openName("piece").text(piece.mark());
    name.leaf("small", task.figures().length(piece.lengthM())).close();
    table.openCell("spot").leaf("span", step.toId(), "class", "plate").close();
    table.cell("tier-of", rack ? "on end" : "tier " + step.tier());
    String layer = task.layerOnSpot(bundle, packed) + " of " + bundle.layers();
    table.cell("layer", rack ? "-" : layer);
    table.cell("mass", task.figures().mass(piece.mass().highKg()));
    Markup people = table.openCell("people");
    String who = team.needsDevice(piece) ? "device" : Integer.toString(team.people(piece));
    people.leaf("b", who).close();
    table.close();
    page.line();
  }
}
