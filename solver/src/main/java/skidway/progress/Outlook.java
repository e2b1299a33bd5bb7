package skidway.progress;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;
import skidway.erection.HoldPoint;
import skidway.erection.Placement;
import skidway.erection.Schedule;
import skidway.erection.Timetable;
import skidway.plan.Task;

/**
 * How long the crew has work with what is there, and how long it has none after that. Reckoned at
 * the schedule's rate, which promises nothing.
 *
 * @param stop the first piece that is missing, damaged or late; none when nothing is
 * @param crewDays of work with all that can be laid, in whatever order
 * @param idle working time between the last piece that can be laid and the next load expected after
 *     that; zero where work lasts until then, or where no load is expected
 */
public record Outlook(Optional<Placement> stop, double crewDays, Duration idle) {
  /**
   * The outlook of a job as it stands.
   *
   * @param job the whole job
   * @param schedule as it goes on from now
   */
  public static Outlook of(Task job, Progress progress, Schedule schedule) {
    HoldPoint hold = Remaining.hold(job, progress);
    int pieces = hold.resequenced().size();
    Timetable timetable = Timetable.of(schedule, job.pullOrder(), hold.resequenced());
    Duration idle =
        hold.isFree() ? Duration.ZERO : idle(job, progress, schedule, timetable.ends(pieces - 1));
    return new Outlook(hold.firstMissing(), timetable.crewDays(0, pieces), idle);
  }

  private static Duration idle(Task job, Progress progress, Schedule schedule, LocalDateTime out) {
    return job.delivery().loads().stream()
        .filter(load -> !progress.arrived().containsKey(load.id()))
        .map(load -> progress.expected(load.id()))
        .filter(expected -> expected.isAfter(out))
        .min(LocalDateTime::compareTo)
        .map(expected -> schedule.calendar().workBetween(out, expected))
        .orElse(Duration.ZERO);
  }
}
