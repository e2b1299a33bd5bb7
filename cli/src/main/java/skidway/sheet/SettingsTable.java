package skidway.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import skidway.plan.Task;
import skidway.rules.Flag;
import skidway.rules.Setting;
import skidway.rules.Settings;

/**
 * Writes the settings this job changed, with the reasons given for it, then those in force that
 * somebody only remembered and that have to be confirmed.
 */
final class SettingsTable {
  private SettingsTable() {}

  static void write(Markup page, Task task, RunningHead head) {
    List<Setting> changed = settings().filter(s -> task.settings().change(s).isPresent()).toList();
    List<Setting> recalled =
        settings().filter(s -> s.flag() == Flag.MEMORY && !changed.contains(s)).toList();
    page.open("section", "id", "changed").leaf("h2", "Settings changed or to confirm");
    if (changed.isEmpty()) {
      page.leaf("p", "None is changed: every limit and time is the usual one.");
    }
    SheetTable table =
        SheetTable.open(
            page,
            head,
            "changed",
            "Setting",
            "On this job",
            "Usually",
            "Reason given, or what to do",
            "What the usual value stands on");
    changed.forEach(setting -> changed(table, task, setting));
    recalled.forEach(setting -> row(table, task, setting, "recalled", Flag.MEMORY.words()));
    table.end();
    page.close().line();
  }

  private static Stream<Setting> settings() {
    return Arrays.stream(Setting.values());
  }

  private static void changed(SheetTable table, Task task, Setting setting) {
    Settings.Change change = task.settings().change(setting).orElseThrow();
    String reason = change.reason().isEmpty() ? "none given" : change.reason();
    row(table, task, setting, setting.published() ? "published" : "own", reason);
  }

  private static void row(SheetTable table, Task task, Setting setting, String kind, String words) {
    table.openRow(kind);
    table.openName("setting").leaf("code", setting.key()).close();
    table.cell("figure", task.figures().of(setting.measure(), task.settings().get(setting)));
    table.cell("figure", task.figures().of(setting.measure(), setting.defaultSi()));
    Markup cell = table.openCell("words");
    if (kind.equals("recalled")) {
      cell.leaf("strong", words, "class", "flag");
    } else {
      cell.text(words);
    }
    cell.close();
    String published = setting.published() ? "published limit, " : "";
    table.cell("source", published + setting.flag().words() + ": " + setting.source()).close();
  }
}
