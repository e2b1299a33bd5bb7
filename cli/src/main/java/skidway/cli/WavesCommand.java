package skidway.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.Planner;
import skidway.job.PlanFiles;
import skidway.job.WaveFiles;
import skidway.plan.WavePlan;

/** Plans which pieces to bring to piles by the walls, and when. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "waves",
    description = {
      "Plans how the bundles of the newest plan, or the one named, are opened: which pieces",
      "to bring in which wave onto piles by the walls, and which to pull straight from their",
      "bundles. Writes it beside the plan."
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
    screen.caution();
    screen.result("");
    screen.result("Waves %s written.", written);
    return ExitCode.FINE;
  }
}
