package skidway.erection;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import skidway.timber.Load;

/**
 * When the walls go up: what dates are reckoned from. None of it is known before the work is done,
 * so dates made of it help to plan and promise nothing.
 *
 * @param begins when the first timber is laid, or the first moment of work after; local time
 */
public record Schedule(LocalDateTime begins, ErectionRate rate, WorkCalendar calendar) {

  /** On a job that says nothing but how fast its crew is. */
  public static Schedule usual(List<Load> loads, ErectionRate rate) {
    WorkCalendar calendar = WorkCalendar.usual();
    return new Schedule(usualBegin(loads, calendar), rate, calendar);
  }

  /**
   * The first day of work after the day on which the first load arrives, which goes into unloading
   * (assumption). Without a load there is nothing to lay, and any day does.
   */
  public static LocalDateTime usualBegin(List<Load> loads, WorkCalendar calendar) {
    LocalDate first =
        loads.stream()
            .map(load -> load.arrival().toLocalDate())
            .min(LocalDate::compareTo)
            .orElse(LocalDate.EPOCH);
    return calendar.opens(first.plusDays(1).atStartOfDay());
  }
}
