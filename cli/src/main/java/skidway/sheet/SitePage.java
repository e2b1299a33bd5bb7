package skidway.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import skidway.plan.Task;
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
   * @param checks measures that show on the ground whether it is right
   */
  public static String html(Task task, List<String> notes, List<String> checks) {
    Markup page = new Markup();
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", "Site of " + task.jobName());
    page.open("style").verbatim(PageStyle.css()).close().close().line().open("body").line();
    page.open("header").open("div", "class", "job").leaf("h1", task.jobName());
    page.leaf("p", task.site().name() + ", before any plan").close().close().line();
    page.open("main").line();
    MapSection.write(page, "Site", StackMap.siteOnly(task, Paper.LYING).svg());
    SitePage site = new SitePage(task);
    notes(page, notes, checks);
    site.walls(page);
    Cautions.write(page, task.site().machine());
    page.close().line();
    page.leaf(
        "footer",
        "Site of " + task.jobName() + ". Made from what somebody told; tape before relying on it.");
    page.close().close();
    return "<!DOCTYPE html>\n" + page.done() + "\n";
  }

  private static void notes(Markup page, List<String> notes, List<String> checks) {
    page.open("section", "id", "check").leaf("h2", "Tape these before relying on the drawing");
    page.open("ul", "class", "ticks");
    checks.forEach(line -> tick(page, line));
    page.close();
    notes.forEach(note -> page.leaf("p", note));
    page.close().line();
  }

  private static void tick(Markup page, String text) {
    page.open("li").leaf("span", "", "class", "box").leaf("span", text).close();
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
      table.cell(
          "words", wall.openings().stream().map(this::opening).collect(Collectors.joining("; ")));
      table.close();
    }
    table.end();
    page.close().line();
  }

  private String opening(WallOpening o) {
    return String.format(
        Locale.ROOT,
        "%s at %s, %s wide",
        o.id(),
        figures.length(o.fromM()),
        figures.length(o.widthM()));
  }
}
