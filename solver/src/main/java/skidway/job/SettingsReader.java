package skidway.job;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import skidway.rules.Level;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.units.Figures;
import skidway.units.Nearest;

/**
 * Reads the settings that a job changes, each as a value or as {@code {"value": .., "reason": ..}}.
 * A published limit is changed with a reason only, and so is any number that guards people and is
 * made weaker.
 */
final class SettingsReader {
  /** Differences below this are rounding, in any SI unit. */
  private static final double SAME = 0.001;

  private static final String WITH_REASON =
      "write {\"value\": ..., \"reason\": \"...\"}, or remove it";

  private final Figures figures;
  private final boolean unitsKnown;
  private final EnumMap<Setting, Settings.Change> changes = new EnumMap<>(Setting.class);

  SettingsReader(Values values) {
    this.figures = values.figures();
    this.unitsKnown = values.unitsKnown();
  }

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
    if (f.sound() && unitsKnown) {
      SettingPairs.check(f, new Settings(changes));
    }
  }

  private void one(Fields f, String key, Setting setting) {
    Bounds.Range range = SettingRange.of(setting);
    Optional<LocatedNode> node = f.node(key, range.words());
    if (node.isPresent() && node.get() instanceof LocatedNode.Members) {
      f.object(key, "setting").ifPresent(change -> withReason(change, setting, range));
    } else {
      double si = f.quantity(key, range);
      changes.put(setting, new Settings.Change(si, ""));
      if (!unitsKnown) {
        return;
      }
      if (setting.published() && Math.abs(si - setting.defaultSi()) > SAME) {
        f.report(
            f.at(key),
            "a published limit changed without a reason",
            "\"" + key + "\" is " + setting.source() + "; it is changed only with a reason",
            WITH_REASON);
      } else if (isWeaker(setting, si)) {
        f.report(
            f.at(key),
            "a " + level(setting) + "rule made weaker without a reason",
            weakerAllowed(setting),
            WITH_REASON);
      }
    }
  }

  /** A figure that is written like the default is the default: 1 ft for 0.30 m. */
  private boolean isWeaker(Setting setting, double si) {
    boolean weaker =
        switch (setting.weaker()) {
          case LOWER -> si < setting.defaultSi() - SAME;
          case HIGHER -> si > setting.defaultSi() + SAME;
          case NEITHER -> false;
        };
    return weaker && !words(setting, si).equals(words(setting, setting.defaultSi()));
  }

  private String weakerAllowed(Setting setting) {
    String rules = guards(setting).map(Rule::id).collect(Collectors.joining(", "));
    boolean one = guards(setting).count() == 1;
    return String.format(
        Locale.ROOT,
        "\"%s\" %s than %s lets through what the %srule%s %s stop%s, so it takes a reason that is"
            + " printed with every plan",
        setting.key(),
        setting.weaker().words(),
        words(setting, setting.defaultSi()),
        level(setting),
        one ? "" : "s",
        rules,
        one ? "s" : "");
  }

  /** The rules that ask less when a setting is made weaker: what is hard, and what is flagged. */
  private static Stream<Rule> guards(Setting setting) {
    return Arrays.stream(Rule.values())
        .filter(r -> r.level() == Level.HARD || r.level() == Level.NOTE)
        .filter(r -> r.settings().contains(setting));
  }

  private static String level(Setting setting) {
    return guards(setting).allMatch(r -> r.level() == Level.HARD) ? "hard " : "";
  }

  private String words(Setting setting, double si) {
    return figures.of(setting.measure(), si);
  }

  private void withReason(Fields change, Setting setting, Bounds.Range range) {
    double si = change.quantity("value", range);
    String reason = Plain.line(change, "reason");
    change.finish(() -> new Settings.Change(si, reason)).ifPresent(c -> changes.put(setting, c));
  }
}
