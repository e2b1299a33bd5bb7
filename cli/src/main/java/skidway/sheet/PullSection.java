package skidway.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.Wave;
import skidway.site.Wall;
import skidway.units.Figures;

/** Writes the pull list: one row a piece, in the order in which they are laid, wall by wall. */
final class PullSection {
  private record Group(Wall wall, int course) {}

  private final Markup page;
  private final Task task;

  private PullSection(Markup page, Task task) {
    this.page = page;
    this.task = task;
  }

  static void write(Markup page, Task task, Plan plan, List<Wave> waves, RunningHead head) {
    page.open("section", "id", "pull").leaf("h2", "Pull list");
    List<PullLine> lines = PullList.of(task, plan, waves);
    PullSection section = new PullSection(page, task);
    if (lines.isEmpty()) {
      page.leaf("p", "The packing list names no piece.");
    } else {
      section.lead(!waves.isEmpty());
      section.table(lines, head);
    }
    page.close().line();
  }

  private void lead(boolean piles) {
    page.open("ul", "class", "lead");
    page.leaf(
        "li",
        "Rehandle first: these lie over the piece, in higher tiers or in higher layers of its bundle,"
            + " and are needed higher up. Once they are laid aside in order within reach,"
            + " later lines that name them need no more work. Pieces of one height along the walls"
            + " are laid in any order: take first what lies on top.");
    page.leaf("li", new Team(task.settings()).heed(task.figures()));
    if (piles) {
      page.leaf(
          "li",
          "Pile: a wave has brought the piece to a pile by its wall, and it is taken from there; its"
              + " layer is the pile's. If the wave has not been brought in, look up its page.");
    }
    page.close();
  }

  private void table(List<PullLine> lines, RunningHead head) {
    SheetTable table =
        SheetTable.open(
            page,
            head,
            "pulls",
            "Turn",
            "Piece",
            "Spot",
            "Tier",
            "Layer from below",
            "Bundle",
            "Weighs at most",
            "People",
            "Rehandle first");
    Map<Group, List<PullLine>> groups =
        lines.stream().collect(Collectors.groupingBy(PullSection::group));
    Optional<Group> under = Optional.empty();
    for (PullLine line : lines) {
      Group group = group(line);
      if (!under.equals(Optional.of(group))) {
        heading(table.group(), group, groups.getOrDefault(group, List.of()));
        under = Optional.of(group);
      }
      row(table, line);
    }
    table.end();
  }

  private static Group group(PullLine line) {
    return new Group(line.placement().wall(), line.piece().course());
  }

  private void heading(SheetTable table, Group group, List<PullLine> here) {
    double footM = here.get(0).placement().bottomM();
    table.openHeading("wall");
    page.leaf("span", "Wall " + group.wall().id() + ", course " + group.course(), "class", "name");
    String count = Figures.counted(here.size(), "piece");
    String height =
        footM > 0 ? ", lower face " + task.figures().length(footM) + " up" : ", at the foot";
    page.leaf("span", count + height, "class", "about");
    table.close().close();
    page.line();
  }

  private void row(SheetTable table, PullLine line) {
    table.openRow(line.over().isEmpty() ? "pull" : "pull under");
    Markup turn = table.openCell("turn");
    turn.leaf("span", "", "class", "box").leaf("b", Integer.toString(line.turn())).close();
    Markup name = table.openName("piece").text(line.piece().mark());
    name.leaf("small", task.figures().length(line.piece().lengthM())).close();
    Markup spot = table.openCell("spot");
    spot.leaf("span", line.place(), "class", nowhere(line) ? "plate waiting" : "plate");
    spot.close();
    table.cell("tier-of", line.level().isEmpty() ? "-" : line.level());
    table.cell("layer", line.layerThere() + " of " + layers(line));
    table.cell("of-bundle", line.bundle().id());
    table.cell("mass", task.figures().mass(line.piece().mass().highKg()));
    Markup people = table.openCell("people");
    people.leaf("b", line.device() ? "device" : Integer.toString(line.people())).close();
    Markup over = table.openCell("over");
    if (!line.over().isEmpty()) {
      over.leaf("span", RehandleWords.of(line.over()), "class", "heed");
    }
    over.close();
    table.close();
    page.line();
  }

  private static boolean nowhere(PullLine line) {
    return line.spot().isEmpty() && line.piled().isEmpty();
  }

  private static int layers(PullLine line) {
    return line.piled().map(Piled::layers).orElse(line.bundle().layers());
  }
}
