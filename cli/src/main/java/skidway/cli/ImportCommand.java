package skidway.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.intake.Column;
import skidway.intake.Imported;
import skidway.intake.Intake;
import skidway.job.Problem;
import skidway.units.Figures;

/** Takes a packing list into a job. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "import",
    description = {
      "Takes the mill's packing list into a job.",
      "The list is XLSX, or text with commas, semicolons or tabs. Says what each "
          + "column is taken for and why, and writes pieces.csv, bundles.csv and loads.csv "
          + "all together. How the list was read stays in imports.json for the next truck's "
          + "list."
    })
final class ImportCommand implements Callable<Integer> {
  private static final int MOST_SHOWN = 30;

  private final Screen screen;

  @Parameters(index = "0", paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "FILE", description = "the packing list")
  private Path file = Path.of("");

  @Mixin private ImportOptions options = new ImportOptions();

  @Option(names = "--dry-run", description = "only show what would be done")
  private boolean dryRun;

  ImportCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    Intake intake = Intake.open(folder, file, options.wishes());
    intake.remarks().forEach(remark -> screen.say("%s", remark.text()));
    tellColumns(intake);
    Imported imported = intake.take();
    imported.notes().forEach(note -> screen.result("%s", note));
    imported.weights().forEach(line -> screen.result("%s", line));
    screen.result("");
    screen.result(
        "Load %s: %s, %s.",
        String.join(", ", imported.loads()),
        Figures.counted(imported.bundles(), "bundle"),
        Figures.counted(imported.pieces(), "piece"));
    tellDifferences(imported);
    if (imported.needsReplace()) {
      screen.say(
          "The job has load %s already, otherwise than in this list; nothing was written. "
              + "Way out: look at the differences, then say --replace.",
          String.join(", ", imported.loads()));
      return ExitCode.BAD_INPUT;
    }
    if (dryRun) {
      screen.result("Nothing was written, as asked.");
    } else {
      List<String> written = imported.write();
      screen.result(
          "%s",
          written.isEmpty()
              ? "Nothing to write: the job says the same already."
              : "Written: " + String.join(", ", written) + ".");
    }
    tellJob(imported.jobLacks());
    screen.caution();
    return ExitCode.FINE;
  }

  private void tellColumns(Intake intake) {
    screen.result(
        "%s: %s, %s, %s of timbers",
        file.getFileName(),
        intake.origin(),
        intake.headerRow() == 0 ? "no header" : "header in row " + intake.headerRow(),
        Figures.counted(intake.rows(), "row"));
    screen.result("");
    TextTable table =
        new TextTable("column", "header", "1st row", "2nd row", "3rd row", "taken for", "why");
    for (Column column : intake.columns()) {
      if (column.header().isEmpty() && column.samples().isEmpty()) {
        continue;
      }
      table.row(
          column.letter(),
          shown(column.header()),
          sample(column, 0),
          sample(column, 1),
          sample(column, 2),
          column.takenFor(),
          column.why());
    }
    screen.results(table.lines());
    screen.result("");
    screen.result(
        "Wrong? Say --column length=E (letter, number or header), or --column length=none.");
    shortened(intake.leftOut()).forEach(line -> screen.result("Not taken: %s", line));
    screen.result("");
    screen.results().flush();
  }

  private static String sample(Column column, int index) {
    return index < column.samples().size() ? shown(column.samples().get(index)) : "";
  }

  private static String shown(String text) {
    String line = text.replaceAll("\\s+", " ");
    return line.length() <= 20 ? line : line.substring(0, 17) + "...";
  }

  private void tellDifferences(Imported imported) {
    if (imported.nothingNew()) {
      screen.result("The job has these timbers already, all the same.");
      return;
    }
    if (imported.loadsWereThere()) {
      screen.result(
          "%s from the job (+ new, - gone, ~ changed):",
          Figures.counted(imported.differences().size(), "difference"));
      shortened(imported.differences()).forEach(line -> screen.result("  %s", line));
      LostEvents.of(folder, imported.gone()).forEach(line -> screen.result("%s", line));
    }
  }

  private void tellJob(List<Problem> lacks) {
    if (lacks.isEmpty()) {
      screen.result("The job is sound; go on with: skidway check %s", folder);
      return;
    }
    screen.result("Before the job can be staged (none of this is the list's fault):");
    shortened(lacks.stream().map(Problem::text).toList())
        .forEach(line -> screen.result("  %s", line));
  }

  private static List<String> shortened(List<String> lines) {
    if (lines.size() <= MOST_SHOWN) {
      return lines;
    }
    List<String> some = new ArrayList<>(lines.subList(0, MOST_SHOWN));
    some.add(String.format(Locale.ROOT, "... and %d more", lines.size() - MOST_SHOWN));
    return some;
  }
}
