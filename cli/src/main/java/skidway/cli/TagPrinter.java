package skidway.cli;

import java.nio.file.Path;
import java.util.List;
import skidway.job.OutFiles;
import skidway.job.PlanFiles;
import skidway.paper.Foot;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.sheet.Packet;
import skidway.sheet.PaperSize;
import skidway.sheet.StyledPage;
import skidway.sheet.TagChange;
import skidway.sheet.TagChanges;
import skidway.sheet.TagFormat;
import skidway.sheet.TagPage;
import skidway.sheet.TagRoll;
import skidway.sheet.TagSheet;

/** Writes the tags of a plan, all or those that have changed. */
final class TagPrinter {
  private final Screen screen;
  private final ChosenPlan chosen;
  private final TagOptions options;
  private final TagFormat format;
  private final PdfPrinter pdf;
  private final boolean halved;

  TagPrinter(
      Screen screen, ChosenPlan chosen, TagOptions options, PaperSize paper, PdfPrinter pdf) {
    this.screen = screen;
    this.chosen = chosen;
    this.options = options;
    this.format = options.format(chosen.job().task().figures().units(), paper);
    this.pdf = pdf;
    this.halved = format instanceof TagSheet sheet && sheet.paper() != paper;
  }

  /** Begins all tags, their PDF too; the page is to be given to {@link #write}. */
  Aside<StyledPage> begin(List<String> broken) {
    Task task = chosen.job().task();
    Aside<StyledPage> page =
        Aside.begin("tags", () -> TagPage.of(task, chosen.plan(), fingerprint(), broken, format));
    pdf.begin("Tags", "tags.pdf", () -> page.done().forPdf(), foot());
    return page;
  }

  void write(Aside<StyledPage> tags) {
    screen.result("Tags: %s", write("tags.html", tags.done().forBrowser()));
    sayHalved();
  }

  private String fingerprint() {
    return PlanFiles.fingerprint(chosen.file());
  }

  /** Below the tags is room for one line, on a label for the count alone: the tag says the rest. */
  private Foot foot() {
    if (format instanceof TagRoll) {
      return new Foot("", "", (format.tagWidthMm() - format.innerWidthMm()) / 2);
    }
    return new Foot(Packet.heading(chosen.plan(), fingerprint()), "", 12);
  }

  private void sayHalved() {
    if (halved && format instanceof TagSheet sheet) {
      screen.say("The tags are for %s paper: tags keep their size.", sheet.paper().word());
    }
  }

  void writeChanged(List<String> broken) {
    Task task = chosen.job().task();
    Plan older = PlanFiles.read(since(options.since().orElseThrow()), task);
    TagChanges changes = TagChanges.between(task, older, chosen.plan());
    String fingerprint = fingerprint();
    StyledPage page = TagPage.of(chosen.plan(), fingerprint, changes, broken, format);
    if (!changes.sameInputs()) {
      screen.say("The job's files have changed since revision %d; what is inside", changes.since());
      screen.say("bundles cannot be compared. With a new packing list print all tags.");
    }
    screen.result("Bundles with new tags: %d", changes.toPrint().size());
    screen.result("Tags to take off, both ends: %d", changes.toTakeOff().size());
    for (TagChange change : changes.toTakeOff()) {
      screen.result(
          "  %s: %s, now %s",
          change.bundleId(),
          change.was().orElseThrow().words(),
          change.now().map(t -> t.place().words()).orElse("no longer delivered"));
    }
    screen.result("Changed tags: %s", write("tags-changed.html", page.forBrowser()));
    pdf.begin("Tags", "tags-changed.pdf", page::forPdf, foot());
    sayHalved();
  }

  private Path since(int revision) {
    return PlanFiles.ofRevision(chosen.job().folder(), revision)
        .orElseThrow(
            () ->
                new BadUsage(
                    "This job has no plan of revision "
                        + revision
                        + ". Way out: name one of those in its plans folder, or print all tags."));
  }

  private Path write(String name, String page) {
    return OutFiles.write(chosen.job().folder(), name, page);
  }
}
