package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.units.Figures;

/** Tells which settings a job changes, from what to what and why. */
final class ChangedLimits {
  private ChangedLimits() {}

  /** A heading and a line for each change; nothing when all defaults are in force. */
  static List<String> lines(Task task) {
    List<String> lines = new ArrayList<>();
    for (Setting setting : Setting.values()) {
      change(setting, task.settings(), task.figures())
          .ifPresent(
              words ->
                  lines.addAll(
                      Wrap.sentence(
                          setting.key()
                              + " "
                              + task.figures().of(setting.measure(), task.settings().get(setting))
                              + words,
                          2,
                          4)));
    }
    if (!lines.isEmpty()) {
      lines.add(0, "Changed for this job");
      lines.add(0, "");
    }
    return lines;
  }

  /** How a setting in force differs from its default, as the end of a sentence. */
  static Optional<String> change(Setting setting, Settings settings, Figures figures) {
    return settings
        .change(setting)
        .map(
            c ->
                " instead of "
                    + figures.of(setting.measure(), setting.defaultSi())
                    + (c.reason().isEmpty() ? "" : ": " + c.reason()));
  }
}
