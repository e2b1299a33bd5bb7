package skidway.cli;

import java.util.List;
import java.util.Locale;
import skidway.plan.Margin;
import skidway.rules.Rule;
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
          margin.limit() == 0 ? "-" : String.format(Locale.ROOT, "%.0f %%", percent(margin)),
          source(margin.rule()));
    }
    return table;
  }

  /** The first clause of a rule's source; the rules command shows all of it. */
  private static String source(Rule rule) {
    return rule.source().split("[;,] ", 2)[0];
  }

  /** Rounded down, so that a limit never seems farther off than it is. */
  private static double percent(Margin margin) {
    return Math.floor(100 * margin.share() + 1e-6) + 0.0;
  }
}
