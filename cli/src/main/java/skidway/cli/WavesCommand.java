package skidway.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.Planner;
import skidway.audit.Finding;
import skidway.audit.WaveAudit;
import skidway.job.OutFiles;
import skidway.job.PlanFiles;
import skidway.job.WaveFiles;
import skidway.plan.WavePlan;
import skidway.sheet.PaperSize;
import skidway.sheet.WaveSheet;

/** Plans which pieces to bring to piles by the walls, and when. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "waves",
    description = {
      "Plans which pieces to bring onto piles by the walls, in which wave.",
      "Of the newest plan, or the one named; all other pieces are pulled straight "
          + "from their bundles. Writes it beside the plan, and a page for each wave into "
          + "the job's out folder."
    })
final class WavesCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(names = "--plan", paramLabel = "FILE", description = "the plan to open bundles of")
  private @Nullable Path file;

  WavesCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, file);
    WavePlan waves =
        Planner.waves(chosen.task(), chosen.plan(), PlanFiles.fingerprint(chosen.file()));
    Path written = WaveFiles.write(chosen.job().folder(), waves);
    screen.results(new WaveSummary(chosen.task(), waves).lines());
    List<Finding> findings = new WaveAudit(chosen.task(), chosen.plan()).findings(waves);
    findings.forEach(
        finding ->
            screen.result("The audit finds %s: %s", finding.rule().id(), finding.sentence()));
    screen.caution();
    screen.result("");
    screen.result("Waves %s written.", written);
    PaperSize paper = PaperSize.usualWith(chosen.task().figures().units());
    String page = WaveSheet.html(chosen.task(), chosen.plan(), waves, paper);
    String name = String.format(Locale.ROOT, "waves-%03d.html", waves.revision());
    screen.result("A page for each wave: %s", OutFiles.write(chosen.job().folder(), name, page));
    return findings.isEmpty() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }
}
