package skidway.job;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import skidway.rules.Setting;
import skidway.rules.Settings;

/**
 * Reads the settings that a job changes, each as a value or as {@code {"value": .., "reason": ..}}.
 * A published limit is changed with a reason only.
 */
final class SettingsReader {
  /** Differences below this are rounding, in any SI unit. */
  private static final double SAME = 0.001;

  private final EnumMap<Setting, Settings.Change> changes = new EnumMap<>(Setting.class);

  Settings read(Fields job) {
    job.object("settings", "setting").ifPresent(this::all);
    return new Settings(changes);
  }

  private void all(Fields f) {
    Map<String, Setting> byKey = new LinkedHashMap<>();
    Arrays.stream(Setting.values()).forEach(s -> byKey.put(s.key(), s));
    for (String key : f.names()) {
      Setting setting = byKey.get(key);
      if (setting == null) {
        f.report(
            f.nameOf(key),
            "unknown setting \"" + Quote.shortened(key) + '"' + Nearest.hint(key, byKey.keySet()),
            "settings are named as in the list of rules, such as " + Setting.STACK_HEIGHT.key(),
            "correct the name or remove it");
      } else {
        one(f, key, setting);
      }
    }
  }

  private void one(Fields f, String key, Setting setting) {
    Bounds.Range range = SettingRange.of(setting);
    Optional<LocatedNode> node = f.node(key, range.words());
    if (node.isPresent() && node.get() instanceof LocatedNode.Members) {
      f.object(key, "setting").ifPresent(change -> withReason(change, setting, range));
    } else {
      double si = f.quantity(key, range);
      if (setting.published() && Math.abs(si - setting.defaultSi()) > SAME) {
        f.report(
            f.at(key),
            "a published limit changed without a reason",
            "\"" + key + "\" is " + setting.source() + "; it is changed only with a reason",
            "write {\"value\": ..., \"reason\": \"...\"}, or remove it");
      }
      changes.put(setting, new Settings.Change(si, ""));
    }
  }

  private void withReason(Fields change, Setting setting, Bounds.Range range) {
    double si = change.quantity("value", range);
    String reason = Plain.line(change, "reason");
    change.finish(() -> new Settings.Change(si, reason)).ifPresent(c -> changes.put(setting, c));
  }
}
