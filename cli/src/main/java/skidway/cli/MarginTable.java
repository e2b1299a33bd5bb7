package skidway.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import skidway.plan.Margin;
import skidway.rules.Setting;
import skidway.units.Figures;

/** Shows how near a plan comes to each limit. */
final class MarginTable {
  private MarginTable() {}

  static TextTable of(List<Margin> margins, Figures figures) {
    TextTable table = new TextTable("rule", "where", ">value", ">limit", ">free", "source");
    for (Margin margin : margins) {
      table.row(
          margin.rule().id(),
          margin.where(),
          figures.of(margin.rule().measure(), margin.value()),
          (margin.atLeast() ? "at least " : "")
              + figures.of(margin.rule().measure(), margin.limit()),
          margin.limit() == 0 ? "-" : String.format(Locale.ROOT, "%.0f %%", 100 * margin.share()),
          margin.rule().source());
    }
    return table;
  }

  /** The settings of a rule as words, for listings. */
  static String settings(List<Setting> settings) {
    return settings.stream().map(Setting::key).collect(Collectors.joining(", "));
  }
}
