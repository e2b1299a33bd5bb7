package skidway.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.audit.Finding;
import skidway.plan.Task;

/** Checks a plan from scratch. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "audit",
    description = {
      "Checks the newest plan, or the one named, against every rule.",
      "It works from the raw figures, without the planner's sums; plans edited by hand are welcome."
    })
final class AuditCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(names = "--plan", paramLabel = "FILE", description = "the plan to check")
  private @Nullable Path file;

  AuditCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    return audit(screen, folder, file);
  }

  static int audit(Screen screen, Path folder, @Nullable Path file) {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, file);
    Task task = chosen.job().task();
    AuditReport report = Audit.of(task, chosen.plan());
    screen.result(
        "%s, %s: %s",
        task.jobName(),
        chosen.file().getFileName(),
        report.clean() ? "nothing found" : report.findings().size() + " findings");
    for (Finding finding : report.findings()) {
      screen.result("  %s: %s", finding.rule().id(), finding.sentence());
    }
    screen.result("");
    screen.results(MarginTable.of(report.margins(), task.figures()).lines());
    screen.results(ChangedLimits.lines(task));
    report.remarks().forEach(remark -> screen.result("Note: %s", remark));
    screen.caution();
    return report.clean() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }
}
