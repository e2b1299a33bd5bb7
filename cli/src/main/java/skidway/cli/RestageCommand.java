package skidway.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.Planner;
import skidway.job.History;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.job.PlanFiles;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.progress.EventWords;
import skidway.progress.Progress;
import skidway.sheet.ChangeSheet;
import skidway.staging.StopButton;

/** Plans what is left after something has happened, and writes it as the next revision. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "restage",
    description = {
      "Plans anew what is left to do, from what was recorded.",
      "What lies stays where it lies unless moving it pays; where no machine unloads, "
          + "all of it stays. Writes the next revision, says what it changes, and how far "
          + "the crew can build with what is there."
    })
final class RestageCommand implements Callable<Integer> {
  private final Screen screen;
  private final StopButton stop;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--lock",
      split = ",",
      paramLabel = "ID",
      description = "bundles, or spots with all that lies there, that must not be moved")
  private List<String> locks = List.of();

  @Option(
      names = "--suppose",
      paramLabel = "SENTENCE",
      description = {
        "what might happen, said as 'record' takes it, several sentences apart by ';'. Compares the",
        "job as it is with this future, and with each further --suppose; nothing is recorded or",
        "written"
      })
  private List<String> supposed = List.of();

  @Mixin private SearchOptions search = new SearchOptions();

  RestageCommand(Screen screen, StopButton stop) {
    this.screen = screen;
    this.stop = stop;
  }

  @Override
  public Integer call() {
    Job job = JobReader.read(folder);
    job.remarks().forEach(remark -> screen.say("%s", remark.text()));
    History history = History.of(job);
    if (!supposed.isEmpty()) {
      return suppose(history);
    }
    Plan before = newest(history);
    Progress progress = history.progress();
    Set<String> locked = locked(progress);
    PlanFiles.requireRoom(job.folder());
    Task left = history.remaining(locked);
    state(job.task(), progress, left).forEach(screen.results()::println);
    screen.result("");
    new HoldWords(job.task(), progress, left.schedule()).lines().forEach(screen.results()::println);
    screen.result("");
    screen.results().flush();
    screen.say("Planning what is left. Interrupt to stop; the best plan so far is kept.");
    ProgressLine line = new ProgressLine(screen, job.task().figures());
    stop.arm();
    Planner.Planned planned = Planner.replan(history, locked, search.limits(), line, stop);
    line.end();
    Path file = PlanFiles.write(job.folder(), planned.plan());
    new PlanSummary(left, planned.plan()).lines().forEach(screen.results()::println);
    screen.result("");
    new PlanChanges(history, before, planned.plan()).lines().forEach(screen.results()::println);
    StageCommand.tellBrokenRules(screen, planned.audit());
    screen.caution();
    screen.result("");
    screen.result("Plan %s written.", file);
    screen.results().flush();
    return planned.audit().clean() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }

  private int suppose(History history) {
    history.requireEventsOf(history.newest().orElseThrow(() -> BadUsage.noPlan(folder)));
    List<Future> futures = Future.of(history, supposed);
    Set<String> locked = locked(history.progress());
    FuturesTable table = new FuturesTable();
    stop.arm();
    for (Future future : futures) {
      screen.say("Planning: %s", future.name());
      ProgressLine line = new ProgressLine(screen, history.job().task().figures());
      table.add(future, Planner.replan(future.history(), locked, search.limits(), line, stop));
      line.end();
    }
    table.lines().forEach(screen.results()::println);
    if (history.job().task().site().byHand()) {
      Wrap.sentence(ChangeSheet.STAYS_BY_HAND, 0, 2).forEach(screen.results()::println);
    }
    screen.caution();
    screen.result("");
    screen.result("Nothing was recorded and no plan was written.");
    if (stop.pressed()) {
      screen.say("Stopped early: these figures depend on how far the search had come.");
    }
    screen.results().flush();
    return ExitCode.FINE;
  }

  private Plan newest(History history) {
    Plan plan = history.newest().orElseThrow(() -> BadUsage.noPlan(folder));
    history.requireEventsOf(plan);
    if (history.events().isEmpty()) {
      throw new BadUsage(
          "Nothing is recorded yet that a new plan could heed. Way out: 'record "
              + folder
              + "' tells what can be recorded; 'stage "
              + folder
              + "' plans the whole job anew.");
    }
    return plan;
  }

  private Set<String> locked(Progress progress) {
    Map<String, List<String>> lying = progress.lying();
    Set<String> locked = new HashSet<>();
    for (String id : locks) {
      List<String> there = lying.get(id);
      if (there != null) {
        locked.addAll(there);
      } else if (progress.spotOf(id).isPresent()) {
        locked.add(id);
      } else {
        throw new BadUsage(
            "--lock "
                + id
                + ": nothing called so lies anywhere. Allowed are bundles that lie and spots with"
                + " something on them: "
                + String.join(", ", lying.keySet())
                + ".");
      }
    }
    return locked;
  }

  /** Where things are, in a line or two. */
  private static List<String> state(Task job, Progress progress, Task left) {
    List<String> lines = new ArrayList<>();
    int pieces = job.delivery().pieces().size();
    lines.add(
        String.format(
            Locale.ROOT,
            "%s: %d of %d loads here, %d bundles lie, %d still to come down, %d used up or missing;"
                + " %d of %d pieces in the walls.",
            job.jobName(),
            progress.arrived().size(),
            job.delivery().loads().size(),
            left.start().stacks().stream().mapToInt(s -> s.bundleIds().size()).sum(),
            progress.onTruck().size(),
            job.delivery().bundles().size() - left.delivery().bundles().size(),
            progress.pulled().size(),
            pieces));
    job.delivery().loads().stream()
        .filter(load -> !progress.arrived().containsKey(load.id()))
        .forEach(
            load ->
                lines.add(
                    "Load "
                        + load.id()
                        + " is expected "
                        + EventWords.time(progress.expected(load.id()))
                        + "."));
    return lines;
  }
}
