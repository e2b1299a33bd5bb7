package skidway.sheet;

import java.util.List;
import java.util.Optional;
import skidway.audit.AuditReport;
import skidway.plan.Baseline;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.units.Figures;

/**
 * Writes what a revision changes on a page for the crew: the moves on the map and in their order,
 * the tags to take off and to print, and what it costs.
 */
public final class ChangeSheet {
  /** On a site without a machine. */
  public static final String STAYS_BY_HAND =
      "No machine is here: what lies stays where it lies. Carrying a pile to another spot by hand is"
          + " neither planned nor priced; whether that pays is for the site lead to judge.";

  private final Task task;
  private final Plan plan;
  private final TagChanges tags;
  private final Markup page = new Markup();
  private final RunningHead head;

  private ChangeSheet(Task task, Plan plan, TagChanges tags, RunningHead head) {
    this.task = task;
    this.plan = plan;
    this.tags = tags;
    this.head = head;
  }

  /**
   * The page.
   *
   * @param task what was left to do when the revision was made
   * @param fingerprint of the newer plan
   * @param tags of bundles that are still to be used
   * @param inShort what changes, a sentence each
   * @param howFar the crew can build with what is there, a sentence each
   * @param lostS working time without a piece to lay until the next load, seconds
   * @param audit of the newer plan
   */
  public static StyledPage page(
      Task task,
      Plan plan,
      String fingerprint,
      TagChanges tags,
      List<String> inShort,
      List<String> howFar,
      double lostS,
      AuditReport audit,
      PaperSize paper) {
    RunningHead head = new RunningHead(plan.jobName(), plan.revision(), fingerprint);
    ChangeSheet sheet = new ChangeSheet(task, plan, tags, head);
    sheet.write(audit, inShort, howFar, lostS, paper);
    return new StyledPage(
        "<!DOCTYPE html>\n" + sheet.page.done() + "\n",
        PageStyle.packet(paper, ""),
        PageStyle.packetInPdf(paper, ""));
  }

  private void write(
      AuditReport audit, List<String> inShort, List<String> howFar, double lostS, PaperSize paper) {
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", "Changes, " + head.words());
    page.open("style").verbatim(StyledPage.STYLE).close().close().line().open("body").line();
    page.open("header").open("div", "class", "job").leaf("h1", head.jobName());
    page.leaf("p", "What changes since revision " + tags.since()).close();
    page.open("p", "class", "revision").text("revision");
    page.leaf("strong", Integer.toString(head.revision()));
    page.leaf("code", Fingerprints.brief(head.fingerprint())).close().close().line();
    page.open("main").line();
    BrokenRules.write(page, Packet.brokenRules(audit));
    sentences("short", "In short", inShort);
    sentences("how-far", "How far the crew can build", howFar);
    Cautions.write(page, task.site().machine());
    MapSheet map = ChangeMap.sheet(task, plan, tags.since(), paper);
    MapSection.write(page, List.of(map), List.of(ChangeMap.narrow(task, plan)));
    moves();
    takeOff();
    print();
    costs(lostS);
    page.close().line();
    page.leaf("footer", head.words() + ". Changes since revision " + tags.since() + ".");
    page.close().close();
  }

  private void sentences(String id, String head, List<String> sentences) {
    page.open("section", "id", id).leaf("h2", head).open("ul");
    sentences.forEach(sentence -> page.leaf("li", sentence));
    page.close().close().line();
  }

  private void moves() {
    page.open("section", "id", "unload");
    if (task.site().byHand()) {
      page.leaf("h2", "What lies already").leaf("p", STAYS_BY_HAND).close().line();
      return;
    }
    page.leaf("h2", "Moves before the next truck, in this order");
    List<Step> lifts = MoveArrow.lifts(task, plan);
    if (lifts.isEmpty()) {
      page.leaf("p", "Nothing that lies already is lifted.");
    } else {
      page.leaf("p", "Only the top of a stack is ever lifted. Loads are checked after every move.");
      SheetTable table = StepRow.table(page, head);
      StepRow rows = new StepRow(table, task, plan);
      lifts.forEach(rows::write);
      table.end();
    }
    page.close().line();
  }

  private void takeOff() {
    page.open("section", "id", "take-off").leaf("h2", "Tags to take off");
    SheetTable table = SheetTable.open(page, head, "tags-off", "Bundle", "Says", "Done");
    for (TagChange change : tags.toTakeOff()) {
      table.openRow("tag");
      table.openName("bundle").text(change.bundleId()).close();
      table.cell("words", change.was().map(TagPlace::words).orElse(""));
      table.openCell("lift").leaf("span", "", "class", "box").close();
      table.close();
    }
    end(table, tags.toTakeOff().isEmpty());
  }

  private void print() {
    page.open("section", "id", "tags").leaf("h2", "Tags to print and put on");
    SheetTable table = SheetTable.open(page, head, "tags-on", "Bundle", "Says", "Why", "Done");
    List<Tag> printed = tags.toPrint();
    for (Tag tag : printed) {
      table.openRow("tag");
      table.openName("bundle").text(tag.bundleId()).close();
      table.cell("words", tag.place().words());
      table.cell("words", why(tag.bundleId()));
      table.openCell("lift").leaf("span", "", "class", "box").close();
      table.close();
    }
    end(table, printed.isEmpty());
  }

  private void end(SheetTable table, boolean none) {
    table.end();
    if (none) {
      page.leaf("p", "None.");
    }
    page.close().line();
  }

  private String why(String bundleId) {
    if (!task.start().lies(bundleId)) {
      return "still to come";
    }
    boolean moves =
        MoveArrow.lifts(task, plan).stream().anyMatch(step -> step.bundleId().equals(bundleId));
    return moves ? "is moved" : "lies there";
  }

  private void costs(double lostS) {
    Figures figures = task.figures();
    page.open("section", "id", "hours").leaf("h2", "What it costs");
    SheetTable table = SheetTable.open(page, head, "hours", "What is left to handle", "Crew time");
    row(table, "As this revision plans it", figures.hours(plan.effort().totalS()));
    if (!task.site().byHand()) {
      row(table, "of it moves of what lies", figures.hours(plan.effort().moveS()));
    }
    for (Baseline other : plan.baselines()) {
      row(table, other.sentence(), figures(other));
    }
    saved("as before").ifPresent(s -> row(table, "Saved against changing nothing", s));
    saved("afresh").ifPresent(s -> row(table, "Saved against planning as if nothing lay there", s));
    row(table, "Working time without a piece to lay, until the next load", figures.hours(lostS));
    table.end();
    page.leaf("p", "Working time is reckoned at an erection rate; that promises nothing.");
    page.close().line();
  }

  private String figures(Baseline other) {
    int bundles = task.delivery().bundles().size();
    String placed = other.placed() == bundles ? "" : other.placed() + " of " + bundles + " placed";
    return other.placed() == 0
        ? "cannot be carried out"
        : task.figures().hours(other.effort().totalS()) + (placed.isEmpty() ? "" : ", " + placed);
  }

  /** Compared only where as many bundles have a spot. */
  private Optional<String> saved(String name) {
    int placed = task.delivery().bundles().size() - plan.unplaced().size();
    return plan.baselines().stream()
        .filter(b -> b.name().equals(name) && b.placed() == placed)
        .findFirst()
        .map(b -> task.figures().hours(b.effort().totalS() - plan.effort().totalS()));
  }

  private static void row(SheetTable table, String what, String figure) {
    table.openRow("hours");
    table.openName("words").text(what).close();
    table.cell("figure", figure);
    table.close();
  }
}
