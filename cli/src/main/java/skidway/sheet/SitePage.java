package skidway.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import skidway.plan.Task;
import skidway.site.Point;
import skidway.site.Wall;
import skidway.site.WallOpening;
import skidway.units.Figures;

/**
 * Writes a site on a page before anything is planned: the drawing, what was worked out, and the
 * measures that tell on the ground whether the drawing is right.
 */
public final class SitePage {
  private final Task task;
  private final Figures figures;

  private SitePage(Task task) {
    this.task = task;
    this.figures = task.figures();
  }

  /**
   * The page.
   *
   * @param notes what was worked out from what was told
   */
  public static String html(Task task, List<String> notes) {
    Markup page = new Markup();
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", "Site of " + task.jobName());
    page.open("style").verbatim(PageStyle.css()).close().close().line().open("body").line();
    page.open("header").open("div", "class", "job").leaf("h1", task.jobName());
    page.leaf("p", task.site().name() + ", before any plan").close().close().line();
    page.open("main").line();
    MapSection.write(page, "Site", StackMap.siteOnly(task, Paper.LYING));
    SitePage site = new SitePage(task);
    site.notes(page, notes);
    site.walls(page);
    Cautions.write(page, task.site().machine());
    page.close().line();
    page.leaf("footer", "Site of " + task.jobName() + ". Made from what somebody told; tape before relying on it.");
    page.close().close();
    return "<!DOCTYPE html>\n" + page.done() + "\n";
  }

  private void notes(Markup page, List<String> notes) {
    page.open("section", "id", "check").leaf("h2", "Tape these before relying on the drawing");
    page.open("ul", "class", "ticks");
    diagonals().forEach(line -> tick(page, line));
    page.close();
    notes.forEach(note -> page.leaf("p", note));
    page.close().line();
  }

  private static void tick(Markup page, String text) {
    page.open("li").leaf("span", "", "class", "box").leaf("span", text).close();
  }

  /** From each corner to the one after next, along centre lines: squareness shows there first. */
  private List<String> diagonals() {
    List<Wall> walls = task.site().walls();
    return java.util.stream.IntStream.range(0, walls.size() - 1)
        .filter(i -> walls.get(i).end().distanceTo(walls.get(i + 1).start()) < 0.01)
        .mapToObj(
            i -> {
              Point from = walls.get(i).start();
              Point to = walls.get(i + 1).end();
              return String.format(
                  Locale.ROOT,
                  "From the start of %s to the end of %s, across: %s, between centre lines.",
                  walls.get(i).id(),
                  walls.get(i + 1).id(),
                  figures.length(from.distanceTo(to)));
            })
        .toList();
  }

  private void walls(Markup page) {
    page.open("section", "id", "walls").leaf("h2", "Walls");
    SheetTable table =
        SheetTable.open(
            page,
            "Site of " + task.jobName(),
            "walls",
            "Wall",
            "Length between centre lines",
            "Thick",
            "Starter",
            "Doors and windows, from the left end of the centre line");
    for (Wall wall : task.site().walls()) {
      table.openRow("wall");
      table.openName("name").text(wall.id()).close();
      table.cell("figure", figures.length(wall.lengthM()));
      table.cell("figure", figures.length(wall.thicknessM()));
      table.cell("words", wall.starter().name().toLowerCase(Locale.ROOT));
      table.cell("words", wall.openings().stream().map(this::opening).collect(Collectors.joining("; ")));
      table.close();
    }
    table.end();
    page.close().line();
  }

  private String opening(WallOpening o) {
    return String.format(
        Locale.ROOT, "%s at %s, %s wide", o.id(), figures.length(o.fromM()), figures.length(o.widthM()));
  }
}
