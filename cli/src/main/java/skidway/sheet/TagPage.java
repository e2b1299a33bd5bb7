package skidway.sheet;

import java.util.List;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.Task;

/**
 * Writes the tags of bundles as sheets of paper to be printed, cut and put on: two for each bundle,
 * one for each end, in off-order.
 */
public final class TagPage {
  private final Markup page = new Markup();
  private final RunningHead head;
  private final TagSheet sheet;

  private TagPage(RunningHead head, TagSheet sheet) {
    this.head = head;
    this.sheet = sheet;
  }

  /**
   * The page with all tags of a plan.
   *
   * @param broken what the plan breaks, a sentence each
   */
  public static StyledPage of(
      Task task, Plan plan, String fingerprint, List<String> broken, TagSheet sheet) {
    List<Tag> tags = Tag.of(task, plan);
    return new TagPage(head(plan, fingerprint), sheet).page(tags, broken, Optional.empty());
  }

  /** The page with the tags that have changed, and before them a list of those to take off. */
  public static StyledPage of(
      Plan plan, String fingerprint, TagChanges changes, List<String> broken, TagSheet sheet) {
    return new TagPage(head(plan, fingerprint), sheet)
        .page(changes.toPrint(), broken, Optional.of(changes));
  }

  private static RunningHead head(Plan plan, String fingerprint) {
    return new RunningHead(plan.jobName(), plan.revision(), fingerprint);
  }

  private StyledPage page(List<Tag> tags, List<String> broken, Optional<TagChanges> changes) {
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    // As wide as a tag: a telephone shows one below the other, each as wide as its screen.
    page.empty("meta", "name", "viewport", "content", "width=" + tagPixels());
    page.leaf("title", "Tags. " + head.words());
    page.open("style").verbatim(StyledPage.STYLE).verbatim(paper()).close().close().line();
    page.open("body").line();
    if (!broken.isEmpty() || changes.isPresent()) {
      page.open("div", "class", "list").leaf("h1", head.words()).line();
      BrokenRules.write(page, broken);
      changes.ifPresent(this::takeOff);
      page.close().line();
    }
    int perBundle = 2;
    for (int from = 0; from < tags.size(); from += sheet.perPage() / perBundle) {
      int to = Math.min(tags.size(), from + sheet.perPage() / perBundle);
      sheet(tags.subList(from, to), !broken.isEmpty());
    }
    page.close().close();
    return new StyledPage(
        "<!DOCTYPE html>\n" + page.done() + "\n", PageStyle.tags(), PageStyle.tagsInPdf());
  }

  private void sheet(List<Tag> tags, boolean broken) {
    page.open("section", "class", "sheet").line();
    CutMarks.write(page, sheet);
    TagArt art = new TagArt(page, sheet);
    for (Tag tag : tags) {
      art.write(tag, head, 1, broken);
      art.write(tag, head, 2, broken);
    }
    page.close().line();
  }

  private void takeOff(TagChanges changes) {
    page.leaf("h2", "Tags to take off, since revision " + changes.since());
    if (!changes.sameInputs()) {
      page.leaf(
          "p",
          "The job's files have changed since that revision. What is inside a bundle cannot be"
              + " compared; when the packing list has changed, print all tags.");
    }
    if (changes.toTakeOff().isEmpty()) {
      page.leaf("p", "None.");
      return;
    }
    SheetTable table =
        SheetTable.open(page, head, "off", "Done", "Bundle", "Old tags say", "Now it goes to");
    for (TagChange change : changes.toTakeOff()) {
      table.openRow("change").openCell("done").leaf("span", "", "class", "box");
      table.close().openName("bundle").text(change.bundleId());
      table.close();
      table.cell("was", change.was().map(TagPlace::words).orElse(""));
      table.cell("now", change.now().map(t -> t.place().words()).orElse("no longer delivered"));
      table.close();
    }
    table.end();
    page.leaf("p", "Take off both tags of each bundle before the new ones go on.");
  }

  private String paper() {
    PaperSize paper = sheet.paper();
    return "@page { size: "
        + PageStyle.millimetres(paper.widthMm(), paper.heightMm())
        + "; margin: 0; }\n.sheet, .cuts { width: "
        + Numbers.of(paper.widthMm())
        + "mm; height: "
        + Numbers.of(paper.heightMm())
        + "mm; }\n.sheet { padding: "
        + Numbers.of(TagSheet.MARGIN_MM)
        + "mm; }\n.tag { width: "
        + Numbers.of(sheet.tagWidthMm())
        + "mm; padding: "
        + Numbers.of(TagSheet.PADDING_MM)
        + "mm; }\n";
  }

  /** A tag with its edge, in the pixels of style sheets, 96 to the inch. */
  private int tagPixels() {
    return (int) Math.ceil(sheet.tagWidthMm() / 25.4 * 96) + 8;
  }
}
