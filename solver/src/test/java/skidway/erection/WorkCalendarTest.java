package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Set;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Monday 5 May 2031 begins the week; Thursday the 29th is off. Work is from 7 to 16 h: 9 h a day.
 */
class WorkCalendarTest {
  private static final WorkCalendar CALENDAR =
      new WorkCalendar(
          EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
          LocalTime.of(7, 0),
          LocalTime.of(16, 0),
          Set.of(LocalDate.of(2031, 5, 29)));

  @Test
  void theWeekOfTheExamplesIsRight() {
    assertThat(LocalDate.of(2031, 5, 5).getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
    assertThat(LocalDate.of(2031, 5, 29).getDayOfWeek()).isEqualTo(DayOfWeek.THURSDAY);
  }

  @ParameterizedTest
  @CsvSource({
    "2031-05-05T08:30, 2031-05-05T08:30",
    "2031-05-05T05:00, 2031-05-05T07:00",
    "2031-05-05T07:00, 2031-05-05T07:00",
    "2031-05-05T16:00, 2031-05-06T07:00",
    "2031-05-09T15:59, 2031-05-09T15:59",
    "2031-05-09T16:00, 2031-05-12T07:00",
    "2031-05-10T10:00, 2031-05-12T07:00",
    "2031-05-28T18:00, 2031-05-30T07:00",
    "2031-05-29T08:00, 2031-05-30T07:00",
  })
  void workGoesOnOrBeginsNextAt(LocalDateTime moment, LocalDateTime opens) {
    assertThat(CALENDAR.opens(moment)).isEqualTo(opens);
  }

  /** From Wednesday noon: 4 h are left of that day; then Thursday, Friday, Monday. */
  @ParameterizedTest
  @CsvSource({
    "2031-05-07T12:00, 0, 2031-05-07T12:00",
    "2031-05-07T12:00, 4, 2031-05-07T16:00",
    "2031-05-07T12:00, 5, 2031-05-08T08:00",
    "2031-05-07T12:00, 13, 2031-05-08T16:00",
    "2031-05-07T12:00, 22, 2031-05-09T16:00",
    "2031-05-07T12:00, 23, 2031-05-12T08:00",
    "2031-05-10T12:00, 0, 2031-05-12T07:00",
    "2031-05-10T12:00, 1, 2031-05-12T08:00",
    "2031-05-28T07:00, 10, 2031-05-30T08:00",
    "2032-02-27T07:00, 10, 2032-03-01T08:00",
  })
  void workIsDoneAt(LocalDateTime begins, int hours, LocalDateTime done) {
    assertThat(CALENDAR.done(begins, Duration.ofHours(hours))).isEqualTo(done);
  }

  @ParameterizedTest
  @CsvSource({
    "2031-05-07T12:00, 2031-05-07T12:00, 0",
    "2031-05-07T12:00, 2031-05-07T11:00, 0",
    "2031-05-07T12:00, 2031-05-07T14:00, 2",
    "2031-05-07T12:00, 2031-05-07T20:00, 4",
    "2031-05-09T15:00, 2031-05-12T08:00, 2",
    "2031-05-10T00:00, 2031-05-11T23:00, 0",
    "2031-05-05T00:00, 2031-06-02T00:00, 171",
  })
  void theCrewWorksBetween(LocalDateTime a, LocalDateTime b, int hours) {
    assertThat(CALENDAR.workBetween(a, b)).isEqualTo(Duration.ofHours(hours));
    assertThat(CALENDAR.crewDaysBetween(a, b)).isEqualTo(hours / 9.0);
  }

  /** The 29th of February 2032 is a Sunday. */
  @Test
  void aLeapDayIsADayLikeAnyOther() {
    WorkCalendar sundays =
        new WorkCalendar(
            EnumSet.of(DayOfWeek.SUNDAY), LocalTime.of(8, 0), LocalTime.of(12, 0), Set.of());
    assertThat(sundays.opens(LocalDateTime.of(2032, 2, 23, 0, 0)))
        .isEqualTo(LocalDateTime.of(2032, 2, 29, 8, 0));
  }

  /** In New York clocks go from 2 to 3 h on 9 March 2031 (the rule in force, from memory). */
  @Test
  void changedClocksChangeNothing() {
    WorkCalendar nights =
        new WorkCalendar(
            EnumSet.allOf(DayOfWeek.class), LocalTime.of(1, 0), LocalTime.of(5, 0), Set.of());
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("America/New_York"));
      assertThat(nights.done(LocalDateTime.of(2031, 3, 8, 1, 0), Duration.ofHours(7)))
          .isEqualTo(LocalDateTime.of(2031, 3, 9, 4, 0));
    } finally {
      TimeZone.setDefault(before);
    }
  }

  @Test
  void refusesACrewThatNeverWorks() {
    LocalTime noon = LocalTime.NOON;
    assertThatThrownBy(() -> new WorkCalendar(Set.of(), LocalTime.MIDNIGHT, noon, Set.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new WorkCalendar(CALENDAR.days(), noon, noon, Set.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
