package skidway.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import skidway.Planner;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.job.PlanFiles;
import skidway.plan.Plan;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;

/** Plans a job and writes the plan. */
@Command(
    name = "stage",
    description =
        "Plans where every bundle goes and writes the plan as the next file in the job's plans folder.")
final class StageCommand implements Callable<Integer> {
  private final Screen screen;
  private final StopButton stop;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Mixin private SearchOptions search = new SearchOptions();

  StageCommand(Screen screen, StopButton stop) {
    this.screen = screen;
    this.stop = stop;
  }

  @Override
  public Integer call() {
    return stage(screen, stop, folder, search.limits());
  }

  static int stage(Screen screen, StopButton stop, Path folder, SearchLimits limits) {
    Job job = JobReader.read(folder);
    ProgressLine progress = new ProgressLine(screen, job.task().figures());
    screen.say(
        "Staging %s. Interrupt to stop; the best plan so far is kept.", job.task().jobName());
    Plan plan = Planner.plan(job, limits, progress, stop);
    progress.end();
    Path file = PlanFiles.write(job.folder(), plan);
    new PlanSummary(job.task(), plan).lines().forEach(screen.results()::println);
    screen.caution();
    screen.result("");
    screen.result("Plan %s written.", file);
    if (stop.pressed()) {
      screen.say("Stopped early: this plan depends on how far the search had come.");
    }
    return plan.unplaced().isEmpty() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }
}
