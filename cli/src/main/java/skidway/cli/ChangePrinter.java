package skidway.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.job.History;
import skidway.job.PlanFiles;
import skidway.paper.Foot;
import skidway.paper.Press;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.progress.Outlook;
import skidway.progress.Progress;
import skidway.sheet.ChangeMap;
import skidway.sheet.ChangeSheet;
import skidway.sheet.Packet;
import skidway.sheet.PaperSize;
import skidway.sheet.StyledPage;
import skidway.sheet.TagChanges;

/** Puts what a revision changes onto a page, a printed page or a drawing. */
final class ChangePrinter {
  private final PlanChanges changes;
  private final PaperOptions paper;

  ChangePrinter(PlanChanges changes, PaperOptions paper) {
    this.changes = changes;
    this.paper = paper;
  }

  /**
   * What a file of this name holds.
   *
   * @throws BadUsage if its name does not say what it shall hold
   */
  byte[] as(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    History history = changes.history();
    Plan plan = changes.to();
    Task left = history.taskOf(plan);
    PaperSize size = paper.size(left.figures().units());
    TagChanges tags = changes.tagChanges();
    if (name.endsWith(".svg")) {
      return utf8(ChangeMap.sheet(left, plan, tags.since(), size).svg());
    }
    if (!name.endsWith(".html") && !name.endsWith(".pdf")) {
      throw new BadUsage(
          "--out is " + file + "; its name must end in .html, .pdf or .svg. Nothing was written.");
    }
    AuditReport audit = Audit.of(left, plan);
    String fingerprint =
        PlanFiles.ofRevision(history.job().folder(), plan.revision())
            .map(PlanFiles::fingerprint)
            .orElse("");
    Task job = history.job().task();
    Progress then = then(history, plan);
    List<String> howFar = new HoldWords(job, then, left.schedule()).sentences();
    double lostS = Outlook.of(job, then, left.schedule()).idle().toSeconds();
    StyledPage page =
        ChangeSheet.page(
            left, plan, fingerprint, tags, changes.inShort(), howFar, lostS, audit, size);
    if (name.endsWith(".html")) {
      return utf8(page.forBrowser());
    }
    List<String> broken = Packet.brokenRules(audit);
    Foot foot = new Foot(Packet.heading(plan, fingerprint), Packet.caution(job, broken), 9);
    Press press =
        paper.press().orElseThrow(() -> new BadUsage("--no-pdf and a name in .pdf do not go."));
    return press.press(page.forPdf(), foot, paper.copies()).bytes();
  }

  private static Progress then(History history, Plan plan) {
    return new History(history.job(), history.plans(), history.events().subList(0, plan.events()))
        .progress();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
