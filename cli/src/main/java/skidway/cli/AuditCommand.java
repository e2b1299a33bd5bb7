package skidway.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.audit.AuditReport;
import skidway.audit.Finding;
import skidway.plan.Task;

/** Checks a plan from scratch. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "audit",
    description = {
      "Checks the newest plan, or the one named, and its waves against every rule.",
      "It works from the raw figures, without the planner's sums; plans edited by hand",
      "are welcome. Tells what it finds, how near each stack comes to its limits, and",
      "what is left to people."
    })
final class AuditCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(names = "--plan", paramLabel = "FILE", description = "the plan to check")
  private @Nullable Path file;

  @Option(names = "--all", description = "every limit of every stack and class of pieces")
  private boolean all;

  @Option(names = "--csv", description = "as comma-separated values, figures in SI units")
  private boolean csv;

  AuditCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, file);
    AuditReport report = chosen.audit(chosen.waves(screen));
    if (csv) {
      screen.results(AuditCsv.lines(report, all));
    } else {
      tell(screen, chosen, report, all);
    }
    return code(report);
  }

  static int audit(Screen screen, Path folder) {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, null);
    AuditReport report = chosen.audit(chosen.waves(screen));
    tell(screen, chosen, report, false);
    return code(report);
  }

  private static void tell(Screen screen, ChosenPlan chosen, AuditReport report, boolean all) {
    Task task = chosen.task();
    screen.result(
        "%s, %s: %s",
        task.jobName(),
        chosen.file().getFileName(),
        report.clean() ? "nothing found" : report.findings().size() + " findings");
    for (Finding finding : report.findings()) {
      screen.result("  %s: %s", finding.rule().id(), finding.sentence());
    }
    screen.result("");
    screen.results(AuditText.lines(task, report, all));
    screen.caution();
  }

  private static int code(AuditReport report) {
    return report.clean() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }
}
