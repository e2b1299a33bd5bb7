package skidway.rules;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The settings in force on a job: the defaults, and what the job changes with its reasons. */
public final class Settings {
  /** A changed value in SI units and the reason given for it, or an empty text. */
  public record Change(double si, String reason) {}

  private final EnumMap<Setting, Change> changes = new EnumMap<>(Setting.class);

  public Settings(Map<Setting, Change> changes) {
    this.changes.putAll(changes);
  }

  public static Settings defaults() {
    return new Settings(Map.of());
  }

  /** The value in force, SI units of the setting's measure. */
  public double get(Setting setting) {
    Change change = changes.get(setting);
    return change == null ? setting.defaultSi() : change.si();
  }

  public Optional<Change> change(Setting setting) {
    return Optional.ofNullable(changes.get(setting));
  }

  public Settings with(Setting setting, double si, String reason) {
    EnumMap<Setting, Change> more = new EnumMap<>(Setting.class);
    more.putAll(changes);
    more.put(setting, new Change(si, reason));
    return new Settings(more);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Settings that && changes.equals(that.changes);
  }

  @Override
  public int hashCode() {
    return changes.hashCode();
  }

  @Override
  public String toString() {
    return "Settings" + changes;
  }
}
