package skidway.sheet;

import java.util.Arrays;
import java.util.List;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;

/** Writes the settings this job changed, with the reasons given for it. */
final class SettingsTable {
  private SettingsTable() {}

  static void write(Markup page, Task task, RunningHead head) {
    List<Setting> changed =
        Arrays.stream(Setting.values()).filter(s -> task.settings().change(s).isPresent()).toList();
    page.open("section", "id", "changed").leaf("h2", "Settings changed");
    if (changed.isEmpty()) {
      page.leaf("p", "None. Every limit and time is the usual one.");
    } else {
      SheetTable table =
          SheetTable.open(
              page,
              head,
              "changed",
              "Setting",
              "On this job",
              "Usually",
              "Reason given",
              "What the usual value stands on");
      changed.forEach(setting -> row(table, task, setting));
      table.end();
    }
    page.close().line();
  }

  private static void row(SheetTable table, Task task, Setting setting) {
    Settings.Change change = task.settings().change(setting).orElseThrow();
    table.openRow(setting.published() ? "published" : "own");
    table.openName("setting").leaf("code", setting.key()).close();
    table.cell("figure", task.figures().of(setting.measure(), change.si()));
    table.cell("figure", task.figures().of(setting.measure(), setting.defaultSi()));
    table.cell("words", change.reason().isEmpty() ? "none given" : change.reason());
    String kind = setting.published() ? "published limit, " : "";
    table.cell("source", kind + setting.flag().words() + ": " + setting.source()).close();
  }
}
