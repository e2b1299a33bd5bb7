package skidway.cli;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import skidway.erection.PullOrder;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.plan.Task;
import skidway.progress.EventWords;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.MassRange;
import skidway.timber.Piece;
import skidway.units.Figures;

/** Reads and weighs a job. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "check",
    description =
        "Reads a job, says everything that is wrong with it, and weighs loads and bundles.")
final class CheckCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  CheckCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    return check(screen, folder);
  }

  static int check(Screen screen, Path folder) {
    Job job = JobReader.read(folder);
    job.remarks().forEach(remark -> screen.say("%s", remark.text()));
    Task task = job.task();
    GivenSpotRemarks.lines(task).forEach(line -> screen.say("%s", line));
    Figures figures = task.figures();
    List<Bundle> bundles = task.delivery().bundles();
    screen.result(
        "%s: %s, %s, %s, %s",
        task.jobName(),
        Figures.counted(task.delivery().loads().size(), "load"),
        Figures.counted(bundles.size(), "bundle"),
        Figures.counted(task.delivery().pieces().size(), "piece"),
        MassWords.sentence(total(bundles), figures));
    screen.result("");
    screen.results(loads(task, figures).lines());
    screen.result("");
    screen.results(bundles(task, figures).lines());
    screen.result("");
    screen.result("Limits are held to the high figures, hours are reckoned with the likely ones.");
    if (task.site().byHand()) {
      screen.result("The site has no machine: people carry every timber off the truck.");
    }
    screen.caution();
    return ExitCode.FINE;
  }

  private static TextTable loads(Task task, Figures figures) {
    TextTable table =
        new TextTable(
            "load",
            "arrives",
            "stands at",
            ">bundles",
            ">pieces",
            ">low",
            ">likely",
            ">high",
            "heaviest");
    for (Load load : task.delivery().loads()) {
      List<Bundle> bundles =
          task.delivery().bundles().stream().filter(b -> b.loadId().equals(load.id())).toList();
      String heaviest =
          bundles.stream()
              .max(Comparator.comparingDouble(b -> b.mass().highKg()))
              .map(b -> b.id() + ", " + figures.mass(b.mass().highKg()))
              .orElse("-");
      MassRange mass = total(bundles);
      table.row(
          load.id(),
          EventWords.time(load.arrival()),
          load.truckStandId(),
          count(bundles.size()),
          count(bundles.stream().mapToInt(b -> b.packed().size()).sum()),
          MassWords.bare(mass.lowKg(), figures),
          MassWords.bare(mass.likelyKg(), figures),
          figures.mass(mass.highKg()),
          heaviest);
    }
    return table;
  }

  private static TextTable bundles(Task task, Figures figures) {
    PullOrder order = task.pullOrder();
    TextTable table =
        new TextTable(
            "bundle",
            "load",
            ">off",
            ">pieces",
            ">length",
            ">width",
            ">height",
            ">low",
            ">likely",
            ">high",
            "first needed",
            ">pull");
    for (Bundle bundle : task.delivery().bundles()) {
      Piece first =
          bundle.pieces().stream().min(Comparator.comparingInt(order::indexOf)).orElseThrow();
      table.row(
          bundle.id(),
          bundle.loadId(),
          count(bundle.offOrder()),
          count(bundle.packed().size()),
          figures.length(bundle.lengthM()),
          figures.length(bundle.widthM()),
          figures.length(bundle.heightM()),
          low(bundle, figures),
          MassWords.bare(bundle.mass().likelyKg(), figures),
          figures.mass(bundle.mass().highKg()),
          first.mark(),
          count(order.indexOf(first) + 1));
    }
    return table;
  }

  /** A bundle on the scales has one mass and no range. */
  private static String low(Bundle bundle, Figures figures) {
    return bundle.weighedKg().isPresent()
        ? "weighed"
        : MassWords.bare(bundle.mass().lowKg(), figures);
  }

  private static MassRange total(List<Bundle> bundles) {
    return bundles.stream().map(Bundle::mass).reduce(MassRange.NOTHING, MassRange::plus);
  }

  private static String count(int number) {
    return String.format(Locale.ROOT, "%d", number);
  }
}
