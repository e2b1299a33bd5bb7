package skidway.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.site.Spot;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/** Writes how two people with two tapes mark every spot before the first truck comes. */
final class SetOutSection {
  private final Markup page;
  private final Task task;
  private final Figures figures;
  private final SetOut setOut;

  private SetOutSection(Markup page, Task task, SetOut setOut) {
    this.page = page;
    this.task = task;
    this.figures = task.figures();
    this.setOut = setOut;
  }

  static void write(Markup page, Task task, Plan plan, RunningHead head) {
    page.open("section", "id", "set-out").leaf("h2", "Set out the spots");
    SetOut setOut = SetOut.of(task, plan);
    SetOutSection section = new SetOutSection(page, task, setOut);
    if (setOut.references().size() < 2) {
      page.leaf("p", "No deck and no walls to measure from: mark the spots from the map.");
    } else if (!setOut.spots().isEmpty()) {
      section.lead();
      section.references(head);
      section.spots(head);
    }
    page.close().line();
  }

  private void lead() {
    String off = figures.units() == UnitSystem.METRIC ? "5 cm" : "2\"";
    List<String> texts =
        List.of(
            "Hook one tape at each of the two letters and pull both to their figures. They meet in"
                + " two places: the right one is on the left of somebody who stands at the first"
                + " letter and looks to the second.",
            "All figures are level. Hold tapes level, not along the ground; plumb down from the deck"
                + " and where the ground falls.",
            "With its four corners marked, measure both diagonals of the spot. More than "
                + off
                + " off: measure again. Lay nothing on a spot that does not close.",
            "Heed floor openings, deck edges, trenches and overhead lines while you look at the"
                + " tape. No metal tape near a power line. When the deck or a wall is not where the"
                + " map has it, stop and ask the site lead.");
    page.open("ul", "class", "lead");
    texts.forEach(text -> page.leaf("li", text));
    page.close().line();
  }

  private void references(RunningHead head) {
    SheetTable table =
        SheetTable.open(page, head, "references", "Tape from", "Where it is", "Check");
    List<Reference> all = setOut.references();
    for (int i = 0; i < all.size(); i++) {
      Reference reference = all.get(i);
      table.openRow(reference.stake() ? "stake" : "fixed");
      table.openName("letter").leaf("span", reference.name(), "class", "corner-letter").close();
      table.cell("where", reference.where());
      Reference next = all.get((i + 1) % all.size());
      String apart = figures.length(reference.at().distanceTo(next.at()));
      table.cell("check", reference.name() + " to " + next.name() + ": " + apart).close();
    }
    table.end();
  }

  private void spots(RunningHead head) {
    SheetTable table =
        SheetTable.open(page, head, "marks", "Corner", "First tape", "Second tape", "On this side");
    for (SpotMarks marks : setOut.spots()) {
      table.group();
      heading(table, marks);
      for (int i = 0; i < marks.fixes().size(); i++) {
        row(table, i + 1, marks.fixes().get(i));
      }
    }
    table.end();
  }

  private void heading(SheetTable table, SpotMarks marks) {
    Spot spot = marks.spot();
    table.openHeading("spot-head");
    page.leaf("span", spot.id(), "class", marks.waiting() ? "plate waiting" : "plate").text(" ");
    String side = Compass.name(spot.towardsOpenSide(), task.site().northDeg());
    page.leaf(
        "span",
        figures.length(spot.footprint().lengthM())
            + " by "
            + figures.length(spot.footprint().widthM())
            + (marks.waiting() ? ", waiting place" : ", " + spot.zoneId())
            + "; corners 1 and 2 "
            + side
            + ", at the open side. ",
        "class",
        "about");
    page.leaf("b", "Diagonals 1-3 and 2-4: " + figures.length(marks.diagonalM()));
    table.close().close();
    page.line();
  }

  private void row(SheetTable table, int number, Optional<TapeFix> fix) {
    table.openRow(fix.isEmpty() ? "spot-corner open" : "spot-corner").openName("number");
    page.leaf("span", "", "class", "box").text(Integer.toString(number)).close();
    tape(table, fix.map(f -> new Tape(f.first(), f.firstM())));
    tape(table, fix.map(f -> new Tape(f.second(), f.secondM())));
    String byItself =
        "no two letters cut well here: measure from this spot's other corners, by its sides and"
            + " diagonals";
    table.cell("side", fix.map(this::side).orElse(byItself)).close();
  }

  private record Tape(Reference from, double metres) {}

  private void tape(SheetTable table, Optional<Tape> tape) {
    Markup cell = table.openCell("tape");
    tape.ifPresent(
        t ->
            cell.leaf("b", t.from().name(), "class", "corner-letter")
                .text(" " + figures.length(t.metres())));
    cell.close();
  }

  private String side(TapeFix fix) {
    String left = "left of " + fix.first().name() + " to " + fix.second().name();
    String walls =
        task.site().walls().stream()
            .flatMap(wall -> fix.sideOf(wall).stream())
            .collect(Collectors.joining(", "));
    return walls.isEmpty() ? left : left + ", " + walls;
  }
}
