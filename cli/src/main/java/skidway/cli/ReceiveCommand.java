package skidway.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.intake.TickedSheet;
import skidway.job.EventLog;
import skidway.job.EventsFile;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.job.OutFiles;
import skidway.job.PlanFiles;
import skidway.job.PlanMark;
import skidway.paper.Foot;
import skidway.plan.Task;
import skidway.progress.Contradiction;
import skidway.progress.Count;
import skidway.progress.Event;
import skidway.progress.Progress;
import skidway.progress.Receipt;
import skidway.sheet.PaperSize;
import skidway.sheet.StyledPage;
import skidway.sheet.TickSheet;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;
import skidway.units.Nearest;

/** Counts a load at the truck: what is expected, what came, what the supplier owes. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "receive",
    description = {
      "Counts a load at the truck.",
      "Without more it writes what is expected of it as a sheet to tick, for paper, "
          + "phone and spreadsheet. With the sheet filled in (yes, no, damaged or extra for "
          + "every bundle), or with what was counted as options, it records all of it or "
          + "nothing, and writes a claim list for the supplier into the job's out folder."
    })
final class ReceiveCommand implements Callable<Integer> {
  private final Screen screen;
  private final Clock clock;

  @Parameters(index = "0", paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "LOAD", description = "the load that came")
  private String loadId = "";

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "SHEET",
      description = "the tick sheet, filled in (text or XLSX)")
  private @Nullable Path sheet;

  @Mixin private CountOptions counted = new CountOptions();

  @Option(names = "--pieces", description = "the sheet to tick has a row for each piece")
  private boolean pieces;

  @Mixin private Witness witness = new Witness();

  @Mixin private PaperOptions paper = new PaperOptions();

  ReceiveCommand(Screen screen, Clock clock) {
    this.screen = screen;
    this.clock = clock;
  }

  @Override
  public Integer call() {
    if (sheet != null && counted.said()) {
      throw new BadUsage(
          "The count is in a sheet or on the command line, not both; nothing was recorded. Way out:"
              + " leave one of them out.");
    }
    return sheet == null && !counted.said() ? expect() : record();
  }

  private static Load load(Delivery delivery, String id) {
    List<String> ids = delivery.loads().stream().map(Load::id).toList();
    return delivery
        .load(id)
        .orElseThrow(
            () ->
                new BadUsage(
                    "The job has no load \""
                        + id
                        + "\""
                        + Nearest.hint(id, ids)
                        + "; its loads are "
                        + String.join(", ", ids)
                        + ". Nothing was recorded. Way out: name one of them, or import its list."));
  }

  /** Writes the sheet to tick, and anew the claim list of a load that came before. */
  private Integer expect() {
    Job job = JobReader.read(folder);
    Task task = job.task();
    Load load = load(task.delivery(), loadId);
    Optional<Claim> owed = owed(task, load);
    TextTable table = new TextTable(">off", "bundle", ">pieces", ">at most", "long");
    for (Bundle bundle : TickSheet.bundles(task, load)) {
      table.row(
          Integer.toString(bundle.offOrder()),
          bundle.id(),
          Integer.toString(bundle.packed().size()),
          task.figures().mass(bundle.mass().highKg()),
          task.figures().length(bundle.lengthM()));
    }
    screen.results(table.lines());
    screen.result("");
    StyledPage page = TickSheet.of(task, load, pieces, size(task));
    String stem = Claim.fileName(task, load, "receive", "");
    screen.result("To tick: %s", OutFiles.write(folder, stem + ".html", page.forBrowser()));
    Foot foot = new Foot(TickSheet.heading(task, load), "", 9);
    new PdfPrinter(screen, folder, paper).write("The same", stem + ".pdf", page::forPdf, foot);
    Path csv = OutFiles.write(folder, stem + ".csv", TickCsv.text(task, load, pieces));
    screen.result("To fill in as a table: %s", csv);
    screen.result("Then: skidway receive %s %s %s", folder, loadId, csv);
    screen.result("or:   skidway receive %s %s --complete", folder, loadId);
    owed.ifPresent(this::claim);
    screen.caution();
    return ExitCode.FINE;
  }

  /** What the load still owes, where it was counted before. */
  private Optional<Claim> owed(Task task, Load load) {
    if (PlanFiles.newest(folder).isEmpty() || Files.notExists(folder.resolve(EventsFile.NAME))) {
      return Optional.empty();
    }
    return Claim.of(task, load, Standing.of(screen, folder).progress());
  }

  private PaperSize size(Task task) {
    return paper.size(task.figures().units());
  }

  private Integer record() {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, null);
    Task task = chosen.job().task();
    Load load = load(task.delivery(), loadId);
    Count count = count(task.delivery());
    PlanMark mark = PlanMark.of(chosen.plan(), chosen.file());
    List<Progress> after = new ArrayList<>();
    List<Event> recorded =
        EventsFile.append(
            chosen.job(), mark, log -> events(Standing.of(screen, chosen, log), count, log, after));
    screen.results(EventTable.lines(recorded, Map.of()));
    if (recorded.size() > 1) {
      int last = recorded.get(recorded.size() - 1).seq();
      screen.result("To take all of them back: undo %d-%d", recorded.get(0).seq(), last);
    }
    screen.result("Recorded.");
    Claim.of(task, load, after.get(0)).ifPresent(this::claim);
    if (!count.complete()) {
      screen.result("Go on with: skidway restage %s", folder);
    }
    return ExitCode.FINE;
  }

  private Count count(Delivery delivery) {
    return sheet == null ? counted.count(loadId) : TickedSheet.read(sheet, delivery, loadId);
  }

  private List<Event> events(Standing standing, Count count, EventLog log, List<Progress> after) {
    Progress progress = standing.progress();
    Receipt receipt = new Receipt(count, standing.task().delivery(), progress);
    List<Contradiction> found = receipt.objections();
    List<Event> events = receipt.events(witness.when(log, clock), witness.who());
    if (found.isEmpty()) {
      found = progress.check(events);
    }
    if (!found.isEmpty()) {
      throw CountOptions.refused(found.stream().map(Contradiction::text).toList());
    }
    for (Event event : events) {
      progress = progress.with(event);
    }
    after.add(progress);
    return events;
  }

  private void claim(Claim claim) {
    String stem = Claim.fileName(claim.task(), claim.load(), "claim", "");
    Path text = OutFiles.write(folder, stem + ".txt", ClaimText.of(claim));
    Path csv = OutFiles.write(folder, stem + ".csv", ClaimCsv.text(claim));
    String what = claim.lines().isEmpty() ? "nothing to claim" : claim.lines().size() + " to claim";
    screen.result("Load %s: %s; for the supplier: %s, %s", loadId, what, text, csv);
  }
}
