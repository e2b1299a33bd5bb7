package skidway.erection;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * When a crew works, in the site's local time. A day's work is reckoned as long on every day: no
 * shift crosses the hour at which clocks are changed, because work ends on the day it begins.
 *
 * @param from when work begins each day
 * @param until when it ends, on the same day; breaks are not told apart
 * @param off days without work, whatever day of the week they are
 */
public record WorkCalendar(
    Set<DayOfWeek> days, LocalTime from, LocalTime until, Set<LocalDate> off) {

  public WorkCalendar {
    if (days.isEmpty()) {
      throw new IllegalArgumentException("A crew that never works has no calendar.");
    }
    if (!until.isAfter(from)) {
      throw new IllegalArgumentException(
          "Work from " + from + " until " + until + " must end after it begins.");
    }
    days = Collections.unmodifiableSet(EnumSet.copyOf(days));
    off = Collections.unmodifiableSet(new TreeSet<>(off));
  }

  /** Monday to Friday from 7 to 16 h, no day off: an assumption, the job says better. */
  public static WorkCalendar usual() {
    return new WorkCalendar(
        EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
        LocalTime.of(7, 0),
        LocalTime.of(16, 0),
        Set.of());
  }

  public boolean isWorkDay(LocalDate date) {
    return days.contains(date.getDayOfWeek()) && !off.contains(date);
  }

  public Duration dayLength() {
    return Duration.between(from, until);
  }

  /** The moment itself if work goes on then, or else when it next begins. */
  public LocalDateTime opens(LocalDateTime moment) {
    LocalDate date = moment.toLocalDate();
    if (isWorkDay(date) && moment.toLocalTime().isBefore(until)) {
      return moment.toLocalTime().isBefore(from) ? date.atTime(from) : moment;
    }
    do {
      date = date.plusDays(1);
    } while (!isWorkDay(date));
    return date.atTime(from);
  }

  /**
   * When so much work is done that begins at a moment or as soon after as the crew works. Work that
   * fills a day is done at the end of that day, not on the morning after.
   *
   * @param work not negative
   */
  public LocalDateTime done(LocalDateTime begins, Duration work) {
    LocalDateTime at = opens(begins);
    Duration left = work;
    Duration today = Duration.between(at.toLocalTime(), until);
    while (left.compareTo(today) > 0) {
      left = left.minus(today);
      at = opens(at.toLocalDate().atTime(until));
      today = dayLength();
    }
    return at.plus(left);
  }

  /** How long the crew works between two moments; nothing if the second is not after the first. */
  public Duration workBetween(LocalDateTime a, LocalDateTime b) {
    Duration sum = Duration.ZERO;
    LocalDateTime at = opens(a);
    while (at.isBefore(b)) {
      LocalDateTime end = at.toLocalDate().atTime(until);
      sum = sum.plus(Duration.between(at, end.isBefore(b) ? end : b));
      at = opens(end);
    }
    return sum;
  }

  /** The same in days of the crew's work, as in what a late load costs it. */
  public double crewDaysBetween(LocalDateTime a, LocalDateTime b) {
    return (double) workBetween(a, b).toSeconds() / dayLength().toSeconds();
  }
}
