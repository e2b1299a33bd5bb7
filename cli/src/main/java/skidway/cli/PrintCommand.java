package skidway.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.job.History;
import skidway.job.OutFiles;
import skidway.job.PlanFiles;
import skidway.paper.Foot;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.sheet.MapSheet;
import skidway.sheet.Packet;
import skidway.sheet.PaperSize;
import skidway.sheet.Part;
import skidway.sheet.StackMap;
import skidway.sheet.StyledPage;

/** Writes the map, the page for the crew and the tags. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "print",
    description = {
      "Writes stack map, set-out, unloading sheet, shopping list, pull list, signs and placards as",
      "one page, for a browser and as a PDF to be printed, and the pull list as a table for",
      "spreadsheets (out/pull.csv).",
      "Tags for both ends of every bundle are a page of their own. Of the newest plan, or",
      "of the one named, into the job's out folder. The pages need no network and open on",
      "a phone."
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
    PaperSize size = paper.size(task.figures().units());
    PdfPrinter pdf = new PdfPrinter(screen, chosen.job().folder(), paper);
    TagPrinter tags = new TagPrinter(screen, chosen, options, size, pdf);
    Plan plan = chosen.plan();
    String fingerprint = PlanFiles.fingerprint(chosen.file());
    AuditReport audit = Audit.of(task, plan);
    List<String> broken = Packet.brokenRules(audit);
    if (options.onlyChanged()) {
      tags.writeChanged(broken);
      pdf.finish();
      return code(screen, broken, audit);
    }
    String stem = chosen.file().getFileName().toString().replaceFirst("\\.json$", "");
    Path out = chosen.job().folder();
    List<MapSheet> map =
        parts.contains(Part.MAP) ? StackMap.sheets(task, plan, fingerprint, size) : List.of();
    if (!map.isEmpty()) {
      screen.result("Map alone: %s", OutFiles.write(out, "map-" + stem + ".svg", map.get(0).svg()));
    }
    if (!parts.equals(EnumSet.of(Part.TAGS))) {
      StyledPage packet = Packet.page(task, plan, fingerprint, audit, parts, size, map);
      String name = "packet-" + stem + only.suffix();
      screen.result(
          "%s: %s", only.words(), OutFiles.write(out, name + ".html", packet.forBrowser()));
      Foot foot = new Foot(Packet.heading(plan, fingerprint), Packet.caution(broken), 9);
      pdf.begin("Pages", name + ".pdf", packet::forPdf, foot);
    }
    if (parts.contains(Part.UNLOAD) && plan.events() > 0) {
      changes(screen, chosen, paper, stem);
    }
    if (parts.contains(Part.PULL)) {
      String pulls = PullCsv.text(task, plan, fingerprint);
      screen.result("Pull list for a spreadsheet: %s", OutFiles.write(out, "pull.csv", pulls));
    }
    if (parts.contains(Part.TAGS)) {
      tags.writeAll(broken);
    }
    pdf.finish();
    return code(screen, broken, audit);
  }

  /** What the revision changes against the one before, when it was made from what happened. */
  private static void changes(Screen screen, ChosenPlan chosen, PaperOptions paper, String stem) {
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
      String name = "changes-" + stem + kind;
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
