package skidway.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.audit.AuditReport;
import skidway.audit.Finding;
import skidway.plan.Task;
import skidway.plan.WavePlan;

/** Checks a plan from scratch. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "audit",
    description = {
      "Checks the newest plan, or the one named, and its waves against every rule.",
      "It works from the raw figures, without the planner's sums; plans edited by "
          + "hand are welcome. Tells what it finds, how near each stack comes to its "
          + "limits, and what is left to people."
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
    Optional<WavePlan> waves = chosen.waves(screen);
    AuditReport report = chosen.audit(waves);
    if (csv) {
      screen.results(AuditCsv.lines(report, all));
    } else {
      tell(screen, chosen.task(), name(chosen, waves), report, all);
    }
    return code(report);
  }

  static int audit(Screen screen, Path folder) {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, null);
    Optional<WavePlan> waves = chosen.waves(screen);
    AuditReport report = chosen.audit(waves);
    tell(screen, chosen.task(), name(chosen, waves), report, false);
    return code(report);
  }

  /** What was judged. */
  private static String name(ChosenPlan chosen, Optional<WavePlan> waves) {
    return chosen.file().getFileName() + (waves.isPresent() ? " with its waves" : "");
  }

  private static void tell(Screen screen, Task task, String name, AuditReport report, boolean all) {
    screen.result(
        "%s, %s: %s",
        task.jobName(),
        name,
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
