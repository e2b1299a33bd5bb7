package skidway.sheet;

import java.util.List;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.Task;

/**
 * Writes the tags of bundles, to be printed, cut where they share a sheet, and put on: two for each
 * bundle, one for each end, in off-order.
 */
public final class TagPage {
  private final Markup page = new Markup();
  private final RunningHead head;
  private final TagFormat format;
  private final String defers;

  private TagPage(RunningHead head, TagFormat format, String defers) {
    this.head = head;
    this.format = format;
    this.defers = defers;
  }

  /**
   * The page with all tags of a plan.
   *
   * @param broken what the plan breaks, a sentence each
   */
  public static StyledPage of(
      Task task, Plan plan, String fingerprint, List<String> broken, TagFormat format) {
    List<Tag> tags = Tag.of(task, plan);
    String defers = TagLines.defers(task.site().byHand());
    return new TagPage(head(plan, fingerprint), format, defers)
        .page(tags, broken, Optional.empty());
  }

  /** The page with the tags that have changed, and before them a list of those to take off. */
  public static StyledPage of(
      Plan plan, String fingerprint, TagChanges changes, List<String> broken, TagFormat format) {
    String defers = TagLines.defers(false); // moved by a machine
    return new TagPage(head(plan, fingerprint), format, defers)
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
    page.open("style").verbatim(StyledPage.STYLE).verbatim(format.css()).close().close().line();
    page.open("body").line();
    if (!broken.isEmpty() || changes.isPresent()) {
      page.open("div", "class", "list").leaf("h1", head.words()).line();
      BrokenRules.write(page, broken);
      changes.ifPresent(this::takeOff);
      page.close().line();
    }
    if (format instanceof TagSheet sheet) {
      sheets(tags, sheet, !broken.isEmpty());
    } else {
      labels(tags, !broken.isEmpty());
    }
    page.close().close();
    return new StyledPage(
        "<!DOCTYPE html>\n" + page.done() + "\n", PageStyle.tags(), PageStyle.tagsInPdf());
  }

  private void sheets(List<Tag> tags, TagSheet sheet, boolean broken) {
    int bundles = sheet.perPage() / 2;
    for (int from = 0; from < tags.size(); from += bundles) {
      page.open("section", "class", "sheet").line();
      CutMarks.write(page, sheet);
      tags.subList(from, Math.min(tags.size(), from + bundles)).forEach(tag -> both(tag, broken));
      page.close().line();
    }
  }

  private void both(Tag tag, boolean broken) {
    TagArt art = new TagArt(page, format, defers);
    art.write(tag, head, 1, broken);
    art.write(tag, head, 2, broken);
  }

  private void labels(List<Tag> tags, boolean broken) {
    TagArt art = new TagArt(page, format, defers);
    for (Tag tag : tags) {
      for (int end = 1; end <= 2; end++) {
        page.open("section", "class", "label").line();
        art.write(tag, head, end, broken);
        page.close().line();
      }
    }
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

  /** A tag with its edge, in the pixels of style sheets, 96 to the inch. */
  private int tagPixels() {
    return (int) Math.ceil(format.tagWidthMm() / 25.4 * 96) + 8;
  }
}
