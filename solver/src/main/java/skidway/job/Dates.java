package skidway.job;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Reads dates and times of day as ISO 8601 has them; other ways of writing dates are ambiguous. */
final class Dates {
  /** No building site is in other years; the limits are assumptions. */
  static final String YEARS = "in the years 2000 to 2199";

  private Dates() {}

  /** As in {@code 2031-05-06}. */
  static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text.strip())).filter(Dates::isBelieved);
    } catch (DateTimeParseException e) {
      return Optional.empty(); // the caller reports it at its place
    }
  }

  /** As in {@code 2031-05-06T08:00}, or with blanks for the T. */
  static Optional<LocalDateTime> moment(String text) {
    try {
      LocalDateTime moment = LocalDateTime.parse(text.strip().replaceFirst(" +", "T"));
      return Optional.of(moment).filter(m -> isBelieved(m.toLocalDate()));
    } catch (DateTimeParseException e) {
      return Optional.empty(); // the caller reports it at its place
    }
  }

  private static boolean isBelieved(LocalDate date) {
    return date.getYear() >= 2000 && date.getYear() <= 2199;
  }
}
