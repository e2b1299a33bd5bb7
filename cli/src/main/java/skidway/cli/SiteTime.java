package skidway.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.progress.EventWords;

/** Reads when something happened or is expected; all times are the site's, to the minute. */
final class SiteTime {
  private static final Pattern LATER = Pattern.compile("\\+(\\d{1,4})\\s*([dh])");

  private SiteTime() {}

  /**
   * When something happened. Said explicitly it may lie before what was recorded last, because much
   * is recorded in the evening, but not after this computer's clock, unless the clock itself is
   * behind the last event and so plainly wrong. Not said, it is now.
   *
   * @param said a date and time of day, or a time of today
   * @throws BadUsage if it cannot be
   */
  static LocalDateTime happened(
      Optional<String> said, LocalDateTime clock, Optional<LocalDateTime> last) {
    LocalDateTime now = clock.truncatedTo(ChronoUnit.MINUTES);
    boolean behind = last.isPresent() && now.isBefore(last.get());
    if (said.isEmpty()) {
      if (behind) {
        throw new BadUsage(
            "It is "
                + EventWords.time(now)
                + " by this computer's clock, but the last event is of "
                + EventWords.time(last.get())
                + "; nothing was recorded. Way out: set the clock, or say when it happened with"
                + " --at.");
      }
      return now;
    }
    LocalDateTime at =
        point(said.get(), now.toLocalDate())
            .orElseThrow(
                () ->
                    new BadUsage(
                        "--at is '"
                            + said.get()
                            + "'; it is a date and time of day such as 2031-05-12T08:00, or a time"
                            + " of today such as 08:00. Nothing was recorded."));
    if (at.isAfter(now) && !behind) {
      throw new BadUsage(
          "--at is "
              + EventWords.time(at)
              + ", but by this computer's clock it is "
              + EventWords.time(now)
              + "; nothing was recorded. Way out: correct --at or the clock.");
    }
    return at;
  }

  /**
   * Until when a load is late.
   *
   * @param said a date and time of day; a date, at the hour that was expected so far; or days or
   *     hours after what was expected so far, as in {@code +3d}
   * @throws BadUsage if it cannot be read
   */
  static LocalDateTime until(String said, LocalDateTime expected) {
    Matcher later = LATER.matcher(said);
    if (later.matches()) {
      long count = Long.parseLong(later.group(1));
      return later.group(2).equals("d") ? expected.plusDays(count) : expected.plusHours(count);
    }
    return point(said, expected.toLocalDate())
        .or(() -> parsed(() -> LocalDate.parse(said).atTime(expected.toLocalTime())))
        .orElseThrow(
            () ->
                Sentence.bad(
                    Sentence.Kind.LATE,
                    "'"
                        + said
                        + "' is no time to wait for: it is 2031-05-12T08:00, 2031-05-12, +3d or"
                        + " +2h."));
  }

  private static Optional<LocalDateTime> point(String said, LocalDate today) {
    String text = said.strip().replaceFirst(" +", "T");
    return parsed(() -> LocalDateTime.parse(text).truncatedTo(ChronoUnit.MINUTES))
        .or(
            () ->
                parsed(() -> today.atTime(LocalTime.parse(text)).truncatedTo(ChronoUnit.MINUTES)));
  }

  private static Optional<LocalDateTime> parsed(Supplier<LocalDateTime> form) {
    try {
      return Optional.of(form.get());
    } catch (DateTimeException e) {
      return Optional.empty(); // another form may fit; the caller says when none does
    }
  }
}
