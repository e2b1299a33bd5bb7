package skidway.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.job.History;
import skidway.job.JobReader;
import skidway.job.OutFiles;
import skidway.plan.Plan;

/** Tells what is different between two revisions. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "changes",
    description = {
      "Tells in sentences what a revision changes.",
      "Bundles that lie or go elsewhere, moves to make, tags to take off and to "
          + "print, hours. Without numbers: the newest against the one before."
    })
final class ChangesCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(index = "0", paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", arity = "0..1", paramLabel = "REV", description = "the older revision")
  private @Nullable Integer older;

  @Parameters(index = "2", arity = "0..1", paramLabel = "REV", description = "the newer revision")
  private @Nullable Integer newer;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = {
        "also writes a sheet for the crew: moves on the map and in order, tags to take off and to",
        "print, costs. FILE ends in .html or .pdf, or in .svg for the map alone"
      })
  private @Nullable Path out;

  @Mixin private PaperOptions paper = new PaperOptions();

  ChangesCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    History history = History.of(JobReader.read(folder));
    Plan to = newer == null ? newest(history) : revision(history, newer);
    Plan from = older == null ? before(history, to) : revision(history, older);
    PlanChanges changes = new PlanChanges(history, from, to);
    Path file = out;
    Optional<byte[]> sheet =
        file == null ? Optional.empty() : Optional.of(new ChangePrinter(changes, paper).as(file));
    changes.lines().forEach(screen.results()::println);
    screen.caution();
    if (file != null && sheet.isPresent()) {
      OutFiles.writeTo(file, sheet.get());
      screen.result("Change sheet: %s", file);
    }
    return ExitCode.FINE;
  }

  private Plan newest(History history) {
    return history.newest().orElseThrow(() -> BadUsage.noPlan(folder));
  }

  private Plan before(History history, Plan plan) {
    return history.plans().stream()
        .filter(p -> p.revision() < plan.revision())
        .reduce((earlier, later) -> later)
        .orElseThrow(
            () ->
                new BadUsage(
                    "Revision "
                        + plan.revision()
                        + " is the only one. Way out: run 'restage "
                        + folder
                        + "' when something has changed."));
  }

  private static Plan revision(History history, int number) {
    Optional<Plan> plan = history.plans().stream().filter(p -> p.revision() == number).findFirst();
    return plan.orElseThrow(
        () ->
            new BadUsage(
                "This job has no plan of revision "
                    + number
                    + "; it has "
                    + history.plans().stream().map(p -> "" + p.revision()).toList()
                    + "."));
  }
}
