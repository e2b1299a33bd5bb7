package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;

/**
 * Writes the rules as comma-separated values, one row a limit, figures in SI units. A rule without
 * limits has one row with its own source.
 */
final class RulesCsv {
  private static final String HEAD =
      "id,sentence,level,setting,in_force,default,unit,source,edition,flag,reason";

  private RulesCsv() {}

  static List<String> lines(Settings settings) {
    List<String> lines = new ArrayList<>(List.of(HEAD));
    for (Rule rule : Rule.values()) {
      if (rule.settings().isEmpty()) {
        lines.add(row(rule, "", "", "", "", rule.source(), "", "", ""));
      }
      rule.settings().forEach(setting -> lines.add(limit(rule, setting, settings)));
    }
    return lines;
  }

  private static String limit(Rule rule, Setting setting, Settings settings) {
    return row(
        rule,
        setting.key(),
        Csv.figure(settings.get(setting)),
        Csv.figure(setting.defaultSi()),
        setting.measure().siUnit(),
        rule.source() + ". " + setting.source(),
        setting.publication().edition(),
        setting.flag().words(),
        settings.change(setting).map(Settings.Change::reason).orElse(""));
  }

  private static String row(Rule rule, String... rest) {
    String level = rule.level().name().toLowerCase(Locale.ROOT);
    return Csv.row(rule.id(), rule.sentence(), level) + "," + Csv.row(rest);
  }
}
