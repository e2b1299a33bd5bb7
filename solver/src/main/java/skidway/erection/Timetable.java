package skidway.erection;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * At what time each piece of a sequence is laid by the schedule, and which is laid by what time.
 * Pieces are laid one after the other; each takes its share of a day by the rate, whatever its
 * size. Times are to the second, which says nothing of how well they are known.
 */
public final class Timetable {
  private final Schedule schedule;

  /** Days of work until each piece of the sequence is laid, and 0 before them. */
  private final double[] doneDays;

  private Timetable(Schedule schedule, double[] doneDays) {
    this.schedule = schedule;
    this.doneDays = doneDays;
  }

  /** For the whole building in its pull order; places are pull indexes. */
  public static Timetable of(Schedule schedule, PullOrder order) {
    return of(schedule, order, order.placements());
  }

  /**
   * For some pieces in another order, as after a hold.
   *
   * @param order the whole building, which tells how many pieces a course has
   */
  public static Timetable of(Schedule schedule, PullOrder order, List<Placement> sequence) {
    Map<Integer, Integer> perCourse = new HashMap<>();
    order.placements().forEach(p -> perCourse.merge(p.piece().course(), 1, Integer::sum));
    double[] doneDays = new double[sequence.size() + 1];
    double done = 0;
    for (int i = 0; i < sequence.size(); i++) {
      done +=
          switch (schedule.rate().unit()) {
            case PIECES -> 1;
            case COURSES -> 1.0 / perCourse.getOrDefault(sequence.get(i).piece().course(), 1);
          };
      doneDays[i + 1] = done / schedule.rate().perDay();
    }
    return new Timetable(schedule, doneDays);
  }

  /** How many pieces it has. */
  public int size() {
    return doneDays.length - 1;
  }

  /**
   * When a piece is begun; for the place after the last, when the crew is ready for something else.
   *
   * @param place in the sequence, from 0
   */
  public LocalDateTime begins(int place) {
    return schedule.calendar().opens(ends(place - 1));
  }

  /** When a piece is laid; for the place before the first, when work begins. */
  public LocalDateTime ends(int place) {
    return schedule.calendar().done(schedule.begins(), work(place + 1));
  }

  /** How many pieces are laid by a moment: those before that place of the sequence. */
  public int laidBy(LocalDateTime moment) {
    Duration worked = schedule.calendar().workBetween(schedule.begins(), moment);
    int low = 0;
    int high = size();
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (work(middle).compareTo(worked) <= 0) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** Days of work that the pieces from one place to before another take. */
  public double crewDays(int fromPlace, int toPlace) {
    return doneDays[toPlace] - doneDays[fromPlace];
  }

  private Duration work(int pieces) {
    return Duration.ofSeconds(
        Math.round(doneDays[pieces] * schedule.calendar().dayLength().toSeconds()));
  }
}
