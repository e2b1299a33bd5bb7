package skidway.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.job.OutFiles;
import skidway.job.PlanFiles;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.sheet.Packet;
import skidway.sheet.Paper;
import skidway.sheet.StackMap;

/** Writes the map and the page for the crew. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "print",
    description = {
      "Writes stack map, unloading sheet, shopping list, pull list, signs and placards as one page,",
      "and the pull list as a table for spreadsheets (out/pull.csv).",
      "Of the newest plan, or of the one named, into the job's out folder. The page needs no",
      "network and opens on a phone."
    })
final class PrintCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(names = "--plan", paramLabel = "FILE", description = "the plan to print")
  private @Nullable Path file;

  PrintCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    return print(screen, folder, file);
  }

  static int print(Screen screen, Path folder, @Nullable Path file) {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, file);
    Task task = chosen.job().task();
    Plan plan = chosen.plan();
    String fingerprint = PlanFiles.fingerprint(chosen.file());
    AuditReport audit = Audit.of(task, plan);
    String stem = chosen.file().getFileName().toString().replaceFirst("\\.json$", "");
    Path map =
        OutFiles.write(
            chosen.job().folder(),
            "map-" + stem + ".svg",
            StackMap.svg(task, plan, fingerprint, Paper.LYING));
    Path packet =
        OutFiles.write(
            chosen.job().folder(),
            "packet-" + stem + ".html",
            Packet.html(task, plan, fingerprint, audit));
    Path pulls =
        OutFiles.write(chosen.job().folder(), "pull.csv", PullCsv.text(task, plan, fingerprint));
    screen.result("Map alone: %s", map);
    screen.result("Map, unloading sheet, shopping list, pull list, signs and placards: %s", packet);
    screen.result("Pull list for a spreadsheet: %s", pulls);
    if (!Packet.brokenRules(audit).isEmpty()) {
      screen.say("The audit finds broken rules in this plan; the packet says so.");
    }
    return audit.clean() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }
}
