package skidway.job;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import skidway.erection.ErectionRate;
import skidway.erection.Schedule;
import skidway.erection.WorkCalendar;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.timber.Load;

/**
 * What {@code job.json} says of when the walls go up; what it leaves out is filled in once the
 * loads are known.
 */
record Erection(Optional<Begin> begins, Optional<ErectionRate> rate, WorkCalendar calendar) {
  /** When work begins, and where the file says so. */
  record Begin(LocalDateTime moment, Place place) {}

  static Erection unsaid() {
    return new Erection(Optional.empty(), Optional.empty(), WorkCalendar.usual());
  }

  /** The schedule; remarks when walls are begun before anything is there. */
  Schedule schedule(List<Load> loads, Settings settings, Problems problems) {
    begins.ifPresent(
        begin ->
            loads.stream()
                .map(Load::arrival)
                .min(LocalDateTime::compareTo)
                .filter(first -> begin.moment().isBefore(first))
                .ifPresent(
                    first ->
                        problems.remark(
                            begin.place(),
                            "walls that go up before the first load arrives",
                            "it arrives on " + first.toLocalDate() + " at " + first.toLocalTime(),
                            "let them begin later, or correct loads.csv")));
    return new Schedule(
        begins.map(Begin::moment).orElseGet(() -> Schedule.usualBegin(loads, calendar)),
        rate.orElseGet(() -> ErectionRate.piecesADay(settings.get(Setting.ERECTION_RATE))),
        calendar);
  }
}
