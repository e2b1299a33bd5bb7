package skidway.job;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads days of the week, as in {@code mon-fri} or {@code mon-thu, sat}. */
final class WorkDays {
  static final String ALLOWED =
      "\"days\" are days of the week that the crew works, such as \"mon-fri\" or \"mon-thu, sat\"";

  private WorkDays() {}

  static Optional<Set<DayOfWeek>> read(String text) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (String part : text.split(",", -1)) {
      String[] ends = part.split("[-\u2013]", -1);
      Optional<DayOfWeek> first = day(ends[0]);
      Optional<DayOfWeek> last = day(ends[ends.length - 1]);
      if (ends.length > 2 || first.isEmpty() || last.isEmpty()) {
        return Optional.empty();
      }
      // Over the end of the week too: sat-mon are three days.
      for (DayOfWeek day = first.get(); ; day = day.plus(1)) {
        days.add(day);
        if (day == last.get()) {
          break;
        }
      }
    }
    return Optional.of(days);
  }

  /** By its whole name or the first three letters or more. */
  private static Optional<DayOfWeek> day(String text) {
    String word = text.strip().toUpperCase(Locale.ROOT);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (word.length() >= 3 && day.name().startsWith(word)) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }
}
