package skidway.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.audit.AuditReport;
import skidway.job.History;
import skidway.job.OutFiles;
import skidway.job.PlanFiles;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.sheet.Packet;
import skidway.sheet.PaperSize;
import skidway.sheet.Part;
import skidway.sheet.StyledPage;

/** Writes the map, the page for the crew and the tags. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "print",
    description = {
      "Writes the papers and tags of a plan, as pages and as PDFs.",
      "Stack map, set-out, unloading sheet, shopping list, pull list, signs and placards as one"
          + " page, for a browser and as a PDF to be printed, and the pull list as a table for"
          + " spreadsheets (out/pull.csv). Waves planned beside the plan go with it, and the pull"
          + " list then names their piles.",
      "Tags for both ends of every bundle are a page of their own. Of the newest plan, or of the"
          + " one named, into the job's out folder. The pages need no network and open on a phone."
    })
final class PrintCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(names = "--plan", paramLabel = "FILE", description = "the plan to print")
  private @Nullable Path file;

  @Mixin private TagOptions tags = new TagOptions();

  @Mixin private PartOptions only = new PartOptions();

  @Mixin private PaperOptions paper = new PaperOptions();

  PrintCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    return print(screen, ChosenPlan.of(screen, folder, file), tags, only, paper);
  }

  static int print(Screen screen, Path folder) {
    ChosenPlan newest = ChosenPlan.of(screen, folder, null);
    return print(screen, newest, new TagOptions(), new PartOptions(), new PaperOptions());
  }

  private static int print(
      Screen screen, ChosenPlan chosen, TagOptions options, PartOptions only, PaperOptions paper) {
    Set<Part> parts = only.parts();
    Task task = chosen.task();
    Optional<WavePlan> waves = chosen.waves(screen);
    if (only.namesWaves() && waves.isEmpty()) {
      throw BadUsage.noWaves(chosen.file(), chosen.job().folder());
    }
    PaperSize size = paper.size(task.figures().units());
    PdfPrinter pdf = new PdfPrinter(screen, chosen.job().folder(), paper);
    TagPrinter tags = new TagPrinter(screen, chosen, options, size, pdf);
    if (options.onlyChanged()) {
      AuditReport audit = chosen.audit(waves);
      List<String> broken = Packet.brokenRules(audit);
      tags.writeChanged(broken);
      pdf.finish();
      return code(screen, broken, audit);
    }
    // Pages and their PDFs take long, so all are begun before the first is written.
    PacketPrinter packet = new PacketPrinter(screen, chosen, only, size, pdf);
    AuditReport audit = chosen.audit(waves);
    List<String> broken = Packet.brokenRules(audit);
    packet.begin(waves, audit, broken);
    Optional<Aside<StyledPage>> allTags =
        parts.contains(Part.TAGS) ? Optional.of(tags.begin(broken)) : Optional.empty();
    packet.write();
    if (parts.contains(Part.UNLOAD) && chosen.plan().events() > 0) {
      changes(screen, chosen, paper);
    }
    if (parts.contains(Part.PULL)) {
      String fingerprint = PlanFiles.fingerprint(chosen.file());
      List<Wave> brought = waves.map(WavePlan::waves).orElse(List.of());
      String pulls = PullCsv.text(task, chosen.plan(), brought, fingerprint);
      Path file = OutFiles.write(chosen.job().folder(), "pull.csv", pulls);
      screen.result("Pull list for a spreadsheet: %s", file);
    }
    allTags.ifPresent(tags::write);
    pdf.finish();
    return code(screen, broken, audit);
  }

  /** What the revision changes against the one before, when it was made from what happened. */
  private static void changes(Screen screen, ChosenPlan chosen, PaperOptions paper) {
    History history = History.of(chosen.job());
    Optional<Plan> before =
        history.plans().stream()
            .filter(p -> p.revision() < chosen.plan().revision())
            .reduce((earlier, later) -> later);
    if (before.isEmpty()) {
      return;
    }
    ChangePrinter sheet =
        new ChangePrinter(new PlanChanges(history, before.get(), chosen.plan()), paper);
    List<String> kinds = paper.press().isPresent() ? List.of(".html", ".pdf") : List.of(".html");
    for (String kind : kinds) {
      String name = "changes-" + chosen.stem() + kind;
      byte[] bytes = sheet.as(Path.of(name));
      screen.result(
          "Changes since revision %d: %s",
          before.get().revision(), OutFiles.write(chosen.job().folder(), name, bytes));
    }
  }

  private static int code(Screen screen, List<String> broken, AuditReport audit) {
    if (!broken.isEmpty()) {
      screen.say("The audit finds broken rules in this plan; the pages say so.");
    }
    return audit.clean() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }
}
