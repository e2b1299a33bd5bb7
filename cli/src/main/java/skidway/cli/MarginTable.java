package skidway.cli;

import java.util.List;
import skidway.plan.Margin;
import skidway.rules.Rule;
import skidway.sheet.MarginWords;
import skidway.units.Figures;

/** Shows how near a plan comes to each limit. */
final class MarginTable {
  private MarginTable() {}

  static TextTable of(List<Margin> margins, Figures figures) {
    TextTable table = new TextTable("rule", "where", ">value", ">limit", ">free", "source");
    for (Margin margin : margins) {
      MarginWords words = new MarginWords(margin, figures);
      table.row(
          margin.rule().id(),
          margin.where(),
          words.value(),
          limit(words),
          words.free(),
          source(margin.rule()));
    }
    return table;
  }

  /** The same with the place first, for reading stack by stack. */
  static TextTable byPlace(String place, List<Margin> margins, Figures figures) {
    TextTable table = new TextTable(place, "rule", ">value", ">limit", ">free", "source");
    for (Margin margin : margins) {
      MarginWords words = new MarginWords(margin, figures);
      table.row(
          margin.where(),
          margin.rule().id(),
          words.value(),
          limit(words),
          words.free(),
          source(margin.rule()));
    }
    return table;
  }

  private static String limit(MarginWords words) {
    return (words.margin().atLeast() ? "at least " : "") + words.limit();
  }

  /** The first clause of a rule's source; the rules command shows all of it. */
  private static String source(Rule rule) {
    return rule.source().split("[;:] |, (?!confirm)", 2)[0];
  }
}
