package skidway.job;

import java.util.List;
import java.util.Optional;
import skidway.rules.Settings;
import skidway.units.UnitSystem;

/**
 * What {@code job.json} says: the job's name, units, changed settings, woods of its own, and when
 * its walls go up.
 *
 * @param units empty when the file does not say; nothing else is judged by size then
 */
record JobHead(
    String name, Optional<UnitSystem> units, Settings settings, Woods woods, Erection erection) {
  static final String FILE = "job.json";
  private static final List<String> UNITS = List.of("us", "metric");

  static JobHead read(Optional<LocatedNode.Members> file, Problems problems) {
    if (file.isEmpty()) {
      return new JobHead(
          "", Optional.empty(), Settings.defaults(), Woods.unread(), Erection.unsaid());
    }
    Fields first = new Fields(file.get(), "a job", new Values(problems, UnitSystem.METRIC, false));
    Optional<UnitSystem> units = units(first);
    Values values = new Values(problems, units.orElse(UnitSystem.METRIC), units.isPresent());
    Fields f = new Fields(file.get(), "a job", values);
    Format.check(f);
    String name = Plain.line(f, "name");
    f.has("units");
    SettingsReader reader = new SettingsReader(values);
    Settings settings = f.has("settings") ? reader.read(f) : Settings.defaults();
    Woods woods = WoodsReader.read(f, problems);
    Erection erection = ErectionReader.read(f, settings);
    JobHead head = new JobHead(name, units, settings, woods, erection);
    f.finish(() -> head);
    return head;
  }

  private static Optional<UnitSystem> units(Fields f) {
    int index = f.choice("units", UNITS);
    return f.sound()
        ? Optional.of(index == 0 ? UnitSystem.US : UnitSystem.METRIC)
        : Optional.empty();
  }
}
