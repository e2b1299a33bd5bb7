package skidway.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.job.JobReader;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/** Lists the rules. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "rules",
    description = "Lists every rule with its level, the limits in force and where they come from.")
final class RulesCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(
      paramLabel = "JOB",
      arity = "0..1",
      description = "a job's folder: its limits instead of the defaults")
  private @Nullable Path folder;

  @Option(names = "--csv", description = "as comma-separated values")
  private boolean csv;

  RulesCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    Settings settings = Settings.defaults();
    Figures figures = new Figures(UnitSystem.US);
    if (folder != null) {
      var task = JobReader.read(folder).task();
      settings = task.settings();
      figures = task.figures();
    }
    if (csv) {
      screen.result(
          "rule,level,sentence,rule_source,setting,in_force,default,unit,flag,source,reason");
    }
    for (Rule rule : Rule.values()) {
      if (csv) {
        rows(rule, settings);
      } else {
        block(rule, settings, figures);
      }
    }
    if (!csv) {
      screen.caution();
    }
    return ExitCode.FINE;
  }

  private void block(Rule rule, Settings settings, Figures figures) {
    screen.result("%s (%s)", rule.id(), rule.level().name().toLowerCase(Locale.ROOT));
    screen.result("  %s", rule.sentence());
    screen.result("  Source: %s.", rule.source());
    for (Setting setting : rule.settings()) {
      String value = figures.of(setting.measure(), settings.get(setting));
      String changed = ChangedLimits.change(setting, settings, figures).orElse("");
      screen.result("  - %s = %s%s", setting.key(), value, changed);
      screen.result("    %s (%s)", setting.source(), setting.flag().words());
    }
    screen.result("");
  }

  private void rows(Rule rule, Settings settings) {
    if (rule.settings().isEmpty()) {
      csvRow(rule, "", "", "", "", "", "", "");
    }
    for (Setting setting : rule.settings()) {
      csvRow(
          rule,
          setting.key(),
          plain(settings.get(setting)),
          plain(setting.defaultSi()),
          setting.measure().siUnit(),
          setting.flag().words(),
          setting.source(),
          settings.change(setting).map(Settings.Change::reason).orElse(""));
    }
  }

  private void csvRow(Rule rule, String... rest) {
    StringBuilder row = new StringBuilder();
    row.append(rule.id()).append(',').append(rule.level()).append(',');
    row.append(quoted(rule.sentence())).append(',').append(quoted(rule.source()));
    for (String cell : rest) {
      row.append(',').append(quoted(cell));
    }
    screen.result("%s", row);
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }

  private static String quoted(String cell) {
    return cell.isEmpty() ? "" : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
