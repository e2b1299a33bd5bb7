package skidway.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.job.JobReader;
import skidway.rules.Settings;
import skidway.sheet.RulesPage;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/** Lists the rules. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "rules",
    description = {
      "Lists every rule with its level, the limits in force and where they come from.",
      "All go to standard output: a table for the screen, comma-separated values or a "
          + "page to print."
    })
final class RulesCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(
      paramLabel = "JOB",
      arity = "0..1",
      description = "a job's folder: its limits instead of the defaults")
  private @Nullable Path folder;

  @ArgGroup private Form form = new Form();

  /** How the list is written; a table unless said otherwise. */
  static final class Form {
    @Option(names = "--csv", description = "as comma-separated values, figures in SI units")
    private boolean csv;

    @Option(names = "--html", description = "as one page that needs no network")
    private boolean html;
  }

  RulesCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    String whose = "Limits as they come, without a job";
    Settings settings = Settings.defaults();
    Figures figures = new Figures(UnitSystem.US);
    if (folder != null) {
      var task = JobReader.read(folder).task();
      whose = "Limits in force on " + task.jobName();
      settings = task.settings();
      figures = task.figures();
    }
    if (form.csv) {
      screen.results(RulesCsv.lines(settings));
    } else if (form.html) {
      screen.results().print(RulesPage.html(whose, settings, figures));
    } else {
      screen.result("%s", whose);
      screen.result("");
      screen.results(new RulesText(settings, figures).lines());
      screen.caution();
    }
    return ExitCode.FINE;
  }
}
