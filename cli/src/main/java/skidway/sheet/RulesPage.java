package skidway.sheet;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import skidway.rules.Flag;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.units.Figures;

/**
 * Writes all rules as one page: each with its sentence, level and source, and below it a row for
 * each limit. What was not read in its source stands out, in black and white too.
 */
public final class RulesPage {
  private static final Set<Flag> UNSURE = EnumSet.of(Flag.MEMORY, Flag.SECONDARY, Flag.ASSUMPTION);

  private final Settings settings;
  private final Figures figures;
  private final SheetTable table;

  private RulesPage(Settings settings, Figures figures, SheetTable table) {
    this.settings = settings;
    this.figures = figures;
    this.table = table;
  }

  /**
   * The page.
   *
   * @param whose whose limits these are, in a few words
   */
  public static String html(String whose, Settings settings, Figures figures) {
    Markup page = new Markup();
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", "Rules. " + whose);
    page.open("style").verbatim(PageStyle.css()).close().close().line();
    page.open("body", "class", "rules-page").line();
    page.open("header").open("div", "class", "job").leaf("h1", "Rules").leaf("p", whose);
    page.close().close().line().open("main").line();
    about(page);
    SheetTable table =
        SheetTable.open(
            page,
            "Rules. " + whose,
            "rules",
            "Limit",
            "In force",
            "Usually",
            "How sure",
            "Edition",
            "Where it comes from");
    RulesPage rules = new RulesPage(settings, figures, table);
    for (Rule rule : Rule.values()) {
      rules.heading(page, rule);
      rule.settings().forEach(rules::limit);
    }
    table.end();
    page.close().close().close();
    return "<!DOCTYPE html>\n" + page.done() + "\n";
  }

  private static void about(Markup page) {
    page.open("section", "id", "about").open("ul");
    page.leaf("li", "Hard: a plan that breaks it must not be carried out.");
    page.leaf("li", "Medium: a plan that breaks it is incomplete.");
    page.leaf("li", "Soft: it costs crew time.");
    page.leaf("li", "Note: no plan can settle it; people must.");
    page.close();
    page.leaf(
        "p",
        "Figures help to plan. They replace neither the machine's own chart, nor the floor designer's"
            + " allowance, nor local codes and licensed practice. Confirm what stands in a frame.");
    page.close().line();
  }

  private void heading(Markup page, Rule rule) {
    table.group();
    Markup head = table.openHeading("rule");
    String level = rule.level().name().toLowerCase(Locale.ROOT);
    head.leaf("span", level, "class", "level " + level);
    head.text(" ").leaf("b", rule.sentence()).text(" ").leaf("code", rule.id());
    head.leaf("small", "Source: " + rule.source() + ".");
    table.close().close();
    page.line();
  }

  private void limit(Setting setting) {
    table.openRow("limit");
    table.openName("setting").leaf("code", setting.key()).close();
    table.openCell("figure").leaf("b", value(setting, settings.get(setting))).close();
    table.cell("figure", value(setting, setting.defaultSi()));
    Markup flag = table.openCell("sure");
    if (UNSURE.contains(setting.flag())) {
      flag.leaf("strong", setting.flag().words(), "class", "flag");
    } else {
      flag.text(setting.flag().words());
    }
    flag.close();
    table.cell("edition", setting.publication().edition());
    Markup source = table.openCell("words").text(setting.source());
    settings
        .change(setting)
        .map(c -> c.reason().isEmpty() ? "no reason given" : c.reason())
        .ifPresent(reason -> source.leaf("strong", "Changed: " + reason, "class", "change"));
    source.close();
    table.close();
  }

  private String value(Setting setting, double si) {
    return figures.of(setting.measure(), si);
  }
}
