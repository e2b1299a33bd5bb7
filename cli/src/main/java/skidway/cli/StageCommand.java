package skidway.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.Hedge;
import skidway.Lateness;
import skidway.Planner;
import skidway.audit.AuditReport;
import skidway.audit.Finding;
import skidway.job.EventsFile;
import skidway.job.History;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.job.PlanFiles;
import skidway.rules.Rule;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;

/** Plans a job and writes the plan. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "stage",
    description =
        "Plans where every bundle goes and writes the plan as the next file in the job's plans folder.")
final class StageCommand implements Callable<Integer> {
  private final Screen screen;
  private final StopButton stop;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--hedge",
      paramLabel = "LOAD=DAYS",
      description = {
        "how late a load may be, such as L2=0..5days; once for each such load. Looks at several plans",
        "and takes the one with the lowest hours over all cases, each as likely as the other"
      })
  private List<String> hedges = List.of();

  @Mixin private SearchOptions search = new SearchOptions();

  StageCommand(Screen screen, StopButton stop) {
    this.screen = screen;
    this.stop = stop;
  }

  @Override
  public Integer call() {
    return stage(screen, stop, folder, search.limits(), hedges);
  }

  static int stage(Screen screen, StopButton stop, Path folder, SearchLimits limits) {
    return stage(screen, stop, folder, limits, List.of());
  }

  private static int stage(
      Screen screen, StopButton stop, Path folder, SearchLimits limits, List<String> hedges) {
    Job job = JobReader.read(folder);
    job.remarks().forEach(remark -> screen.say("%s", remark.text()));
    if (!EventsFile.read(job).events().isEmpty()) {
      throw new BadUsage(
          "Events are recorded; a plan from an empty site would no longer fit. Way out: 'restage "
              + folder
              + "'.");
    }
    History.requireNothingHeeded(job.folder());
    GivenSpotRemarks.lines(job.task()).forEach(line -> screen.say("%s", line));
    List<Lateness> lates = HedgeOption.read(job.task(), hedges);
    PlanFiles.requireRoom(job.folder());
    ProgressLine progress = new ProgressLine(screen, job.task().figures());
    screen.say(
        "Staging %s. Interrupt to stop; the best plan so far is kept.", job.task().jobName());
    stop.arm();
    List<String> hedging = new ArrayList<>();
    Planner.Planned planned;
    if (lates.isEmpty()) {
      planned = Planner.plan(job, limits, progress, stop);
    } else {
      Hedge.Hedged hedged = Hedge.plan(job, lates, limits, progress, stop);
      hedging.addAll(new HedgeTable(job.task(), hedged).lines());
      planned = hedged.chosen().planned();
    }
    progress.end();
    Path file = PlanFiles.write(job.folder(), planned.plan());
    new PlanSummary(job.task(), planned.plan()).lines().forEach(screen.results()::println);
    screen.results(AuditText.openMatters(planned.audit()));
    screen.results(hedging);
    tellBrokenRules(screen, planned.audit());
    screen.caution();
    screen.result("");
    screen.result("Plan %s written.", file);
    if (stop.pressed()) {
      screen.say("Stopped early: this plan depends on how far the search had come.");
    }
    screen.results().flush();
    return planned.audit().clean() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }

  /** Bundles without a spot are told already; anything else should never be found, and is told. */
  static void tellBrokenRules(Screen screen, AuditReport audit) {
    for (Finding finding : audit.findings()) {
      if (finding.rule() != Rule.PLACED) {
        screen.result("The audit finds %s: %s", finding.rule().id(), finding.sentence());
      }
    }
  }
}
