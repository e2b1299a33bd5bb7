package skidway.sheet;

import java.util.Comparator;
import java.util.List;
import skidway.plan.Task;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.Piece;
import skidway.units.Figures;

/**
 * Writes what is expected of a load as a sheet to tick at the truck: a row a bundle in off-order,
 * with room for notes and for what is on no list. It needs no plan.
 */
public final class TickSheet {
  /** Rows left free for what comes beside the list. */
  private static final int FREE_ROWS = 4;

  private static final List<String> CAUTIONS =
      List.of(
          "Count from the ground, after the driver has secured the truck. Nobody climbs on a load or"
              + " stands between truck and machine; what hides is counted when it is down.",
          "Bands under tension spring when they break. A bundle with a broken band or a shifted layer"
              + " is lifted by nobody before the site lead has seen it.",
          "Weights are worked out from size, species and moisture unless weighed; wet or icy timber"
              + " weighs more. They replace neither the machine's chart nor a scale.");

  private final Markup page = new Markup();
  private final Task task;
  private final Figures figures;
  private final Load load;
  private final boolean pieces;

  private TickSheet(Task task, Load load, boolean pieces) {
    this.task = task;
    this.figures = task.figures();
    this.load = load;
    this.pieces = pieces;
  }

  /**
   * The sheet.
   *
   * @param pieces whether each timber has a row, below its bundle
   */
  public static StyledPage of(Task task, Load load, boolean pieces, PaperSize paper) {
    String page = new TickSheet(task, load, pieces).page();
    return new StyledPage(page, PageStyle.tally(paper), PageStyle.tallyInPdf(paper));
  }

  /** The bundles of a load as they come off. */
  public static List<Bundle> bundles(Task task, Load load) {
    return task.delivery().bundles().stream()
        .filter(b -> b.loadId().equals(load.id()))
        .sorted(Comparator.comparingInt(Bundle::offOrder))
        .toList();
  }

  /** Which job and load it is of, in one line. */
  public static String heading(Task task, Load load) {
    return task.jobName() + ", tick sheet of " + LoadNames.of(load);
  }

  private String page() {
    String heading = heading(task, load);
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", heading);
    page.open("style").verbatim(StyledPage.STYLE).close().close().line().open("body").line();
    page.open("header").open("div", "class", "job").leaf("h1", task.jobName());
    page.leaf("p", "To be counted at the truck").close().close().line();
    page.open("main").line();
    page.open("section", "id", "count").leaf("h2", heading);
    page.leaf("p", expected());
    counted();
    signatures();
    page.close().line();
    extras();
    page.open("section", "id", "mind").leaf("h2", "While counting").open("ul");
    CAUTIONS.forEach(text -> page.leaf("li", text));
    page.close().close().line();
    page.close().line();
    page.leaf("footer", heading + ". Record it with: receive JOB " + load.id());
    page.close().close();
    return "<!DOCTYPE html>\n" + page.done() + "\n";
  }

  private String expected() {
    List<Bundle> bundles = bundles(task, load);
    double kg = bundles.stream().mapToDouble(b -> b.mass().highKg()).sum();
    int count = bundles.stream().mapToInt(b -> b.packed().size()).sum();
    return "Expected "
        + Moments.fully(load.arrival())
        + ", truck stand "
        + load.truckStandId()
        + ": "
        + Figures.counted(bundles.size(), "bundle")
        + ", "
        + Figures.counted(count, "piece")
        + ", at most "
        + figures.mass(kg)
        + ".";
  }

  private SheetTable table() {
    return SheetTable.open(
        page,
        heading(task, load),
        "tally",
        "Bundle",
        "Holds",
        "Weighs at most",
        "There",
        "Missing",
        "Damaged",
        "Note");
  }

  private void counted() {
    SheetTable table = table();
    for (Bundle bundle : bundles(task, load)) {
      table.group().openRow(pieces ? "of-load held" : "of-load");
      name(table, bundle.id(), figures.length(bundle.lengthM()) + " long");
      table.cell("holds", Figures.counted(bundle.packed().size(), "piece"));
      table.cell("mass", figures.mass(bundle.mass().highKg()));
      boxes(table);
      if (pieces) {
        bundle.pieces().forEach(piece -> piece(table, piece));
      }
    }
    table.end();
  }

  private void piece(SheetTable table, Piece piece) {
    table.openRow("one");
    name(table, piece.mark(), "");
    table.cell(
        "holds",
        figures.length(piece.lengthM())
            + ", "
            + figures.length(piece.section().widthM())
            + " x "
            + figures.length(piece.section().heightM()));
    table.cell("mass", figures.mass(piece.mass().highKg()));
    boxes(table);
  }

  private static void name(SheetTable table, String name, String small) {
    Markup cell = table.openName("counted").text(name);
    if (!small.isEmpty()) {
      cell.leaf("small", small);
    }
    cell.close();
  }

  private void boxes(SheetTable table) {
    for (int i = 0; i < 3; i++) {
      table.openCell("tick").leaf("span", "", "class", "box").close();
    }
    table.openCell("write").leaf("span", "", "class", "blank short").close();
    table.close();
    page.line();
  }

  private void extras() {
    page.open("section", "id", "extras").leaf("h2", "Came, but is on no list");
    SheetTable table =
        SheetTable.open(page, heading(task, load), "free", "What is written on it", "What it is");
    for (int i = 0; i < FREE_ROWS; i++) {
      table.openRow("empty");
      table.openCell("write").leaf("span", "", "class", "blank").close();
      table.openCell("write").leaf("span", "", "class", "blank").close();
      table.close();
    }
    table.end();
    page.close().line();
  }

  private void signatures() {
    page.open("p", "class", "sign").text("Counted by ").leaf("span", "", "class", "blank");
    page.text(" at ").leaf("span", "", "class", "blank short");
    page.text(" Driver ").leaf("span", "", "class", "blank").close().line();
  }
}
