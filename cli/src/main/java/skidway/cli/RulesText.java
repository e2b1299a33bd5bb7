package skidway.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import skidway.rules.Publication;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.units.Figures;

/**
 * Writes the rules as a table for a screen of 100 columns: one row a limit; below a rule's limits
 * its sentence and every source in full.
 */
final class RulesText {
  private static final int FLAG = 5;
  private static final int EDITION = 6;
  private static final int GAP = 4;

  private final Settings settings;
  private final Figures figures;

  RulesText(Settings settings, Figures figures) {
    this.settings = settings;
    this.figures = figures;
  }

  List<String> lines() {
    TextTable table =
        new TextTable("rule", "level", "limit", ">in force", ">default", "flag", "edition")
            .narrow(FLAG, 20)
            .narrow(EDITION, 9);
    for (Rule rule : Rule.values()) {
      table.note(List.of("-".repeat(Wrap.SCREEN)));
      if (rule.settings().isEmpty()) {
        table.row(rule.id(), level(rule), "none", "", "", "", "");
      }
      rule.settings().forEach(setting -> limit(table, rule, setting));
      table.note(below(rule));
    }
    List<String> lines = new ArrayList<>(table.lines());
    lines.addAll(editions());
    return lines;
  }

  private void limit(TextTable table, Rule rule, Setting setting) {
    table.row(
        rule.id(),
        level(rule),
        setting.key(),
        figures.of(setting.measure(), settings.get(setting)),
        figures.of(setting.measure(), setting.defaultSi()),
        setting.flag().words(),
        mark(setting.publication()));
  }

  private List<String> below(Rule rule) {
    List<String> lines = new ArrayList<>(Wrap.sentence(rule.sentence(), GAP, GAP));
    lines.addAll(Wrap.sentence("Source: " + rule.source() + ".", GAP, 2 * GAP));
    for (Setting setting : rule.settings()) {
      String words = setting.key() + ": " + setting.source() + ".";
      lines.addAll(Wrap.sentence(words, GAP, 2 * GAP));
      ChangedLimits.change(setting, settings, figures)
          .map(
              change -> "Changed: " + figures.of(setting.measure(), settings.get(setting)) + change)
          .ifPresent(change -> lines.addAll(Wrap.sentence(change + ".", 2 * GAP, 2 * GAP)));
    }
    return lines;
  }

  /** What the marks in the column of editions stand for. */
  private static List<String> editions() {
    Set<Publication> used = EnumSet.noneOf(Publication.class);
    Arrays.stream(Setting.values()).forEach(setting -> used.add(setting.publication()));
    used.remove(Publication.NONE);
    List<String> lines = new ArrayList<>(List.of("-".repeat(Wrap.SCREEN), "", "Editions"));
    for (Publication publication : used) {
      String words = mark(publication) + ": " + publication.edition() + ".";
      lines.addAll(Wrap.sentence(words, GAP, 2 * GAP));
    }
    return lines;
  }

  private static String mark(Publication publication) {
    return publication == Publication.NONE ? "none" : publication.name().replace('_', ' ');
  }

  private static String level(Rule rule) {
    return rule.level().name().toLowerCase(Locale.ROOT);
  }
}
