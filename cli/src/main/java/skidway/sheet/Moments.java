package skidway.sheet;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Writes when something comes, in words that cannot be misread for another country's order. */
final class Moments {
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter FULL =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu, HH:mm", Locale.ENGLISH);

  private Moments() {}

  static String shortly(LocalDateTime moment) {
    return SHORT.format(moment);
  }

  static String fully(LocalDateTime moment) {
    return FULL.format(moment);
  }
}
