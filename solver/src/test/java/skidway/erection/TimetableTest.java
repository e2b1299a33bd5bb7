package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static skidway.erection.DrawnHouse.aHouse;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import skidway.site.Starter;
import skidway.timber.Load;

/** Work is from 7 to 16 h, Monday to Friday; 5 May 2031 is a Monday. */
class TimetableTest {
  private static final LocalDateTime MONDAY = LocalDateTime.of(2031, 5, 5, 7, 0);

  /** Three courses of 2, 3 and 1 pieces, A and B first, F last. */
  private static final PullOrder ORDER =
      aHouse().wall("W1", 0, 0, 5, 0, Starter.FULL, "FFFFFFFFFF\nCCCDDDEEEE\nAAAAABBBBB").order();

  private static Timetable timetable(ErectionRate rate) {
    return timetable(MONDAY, rate);
  }

  private static Timetable timetable(LocalDateTime begins, ErectionRate rate) {
    return Timetable.of(new Schedule(begins, rate, WorkCalendar.usual()), ORDER);
  }

  private static LocalDateTime at(int day, int hour, int minute) {
    return LocalDateTime.of(2031, 5, day, hour, minute);
  }

  /** Two a day take 4 1/2 h each. */
  @Test
  void piecesADayTakeEqualShares() {
    Timetable t = timetable(ErectionRate.piecesADay(2));
    assertThat(t.begins(0)).isEqualTo(at(5, 7, 0));
    assertThat(t.ends(0)).isEqualTo(at(5, 11, 30));
    assertThat(t.ends(1)).isEqualTo(at(5, 16, 0));
    assertThat(t.begins(2)).isEqualTo(at(6, 7, 0));
    assertThat(t.ends(5)).isEqualTo(at(7, 16, 0));
    assertThat(t.begins(6)).isEqualTo(at(8, 7, 0));
    assertThat(t.crewDays(0, 6)).isEqualTo(3);
    assertThat(t.crewDays(2, 3)).isEqualTo(0.5);
  }

  /** One course a day: 4 1/2 h, 3 h and 9 h a piece. */
  @Test
  void thePiecesOfACourseShareItsTime() {
    Timetable t = timetable(ErectionRate.coursesADay(1));
    assertThat(t.ends(0)).isEqualTo(at(5, 11, 30));
    assertThat(t.ends(1)).isEqualTo(at(5, 16, 0));
    assertThat(t.ends(2)).isEqualTo(at(6, 10, 0));
    assertThat(t.ends(3)).isEqualTo(at(6, 13, 0));
    assertThat(t.ends(4)).isEqualTo(at(6, 16, 0));
    assertThat(t.ends(5)).isEqualTo(at(7, 16, 0));
    assertThat(timetable(ErectionRate.coursesADay(1.5)).ends(5)).isEqualTo(at(6, 16, 0));
  }

  @Test
  void aSequenceOfSomePiecesKeepsTheSharesOfTheWholeCourse() {
    Schedule schedule = new Schedule(MONDAY, ErectionRate.coursesADay(1), WorkCalendar.usual());
    List<Placement> some = List.of(ORDER.placements().get(2), ORDER.placements().get(0));
    Timetable t = Timetable.of(schedule, ORDER, some);
    assertThat(t.size()).isEqualTo(2);
    assertThat(t.ends(0)).isEqualTo(at(5, 10, 0));
    assertThat(t.ends(1)).isEqualTo(at(5, 14, 30));
  }

  @Test
  void tellsWhatIsLaidByAMoment() {
    Timetable t = timetable(ErectionRate.piecesADay(2));
    assertThat(t.laidBy(at(4, 12, 0))).isEqualTo(0);
    assertThat(t.laidBy(at(5, 11, 29))).isEqualTo(0);
    assertThat(t.laidBy(at(5, 11, 30))).isEqualTo(1);
    assertThat(t.laidBy(at(5, 23, 0))).isEqualTo(2);
    assertThat(t.laidBy(at(6, 11, 0))).isEqualTo(2);
    assertThat(t.laidBy(at(30, 0, 0))).isEqualTo(6);
  }

  @Test
  void workThatBeginsOnASundayBeginsOnMonday() {
    Timetable t = timetable(at(4, 9, 0), ErectionRate.piecesADay(2));
    assertThat(t.begins(0)).isEqualTo(MONDAY);
    assertThat(t.ends(0)).isEqualTo(at(5, 11, 30));
  }

  @Test
  void withNothingToLayTheCrewIsReadyAtOnce() {
    Schedule schedule = new Schedule(MONDAY, ErectionRate.piecesADay(2), WorkCalendar.usual());
    Timetable t = Timetable.of(schedule, ORDER, List.of());
    assertThat(t.size()).isEqualTo(0);
    assertThat(t.begins(0)).isEqualTo(MONDAY);
    assertThat(t.laidBy(at(30, 0, 0))).isEqualTo(0);
    assertThat(t.crewDays(0, 0)).isEqualTo(0);
  }

  @Property(seed = "20310505", tries = 200)
  void whatIsLaidByTheEndOfAPieceIsThatPieceAndAllBeforeIt(
      @ForAll @DoubleRange(min = 0.1, max = 50) double rate,
      @ForAll boolean courses,
      @ForAll @IntRange(max = 400) int hoursLater,
      @ForAll @IntRange(max = 5) int place) {
    ErectionRate some = courses ? ErectionRate.coursesADay(rate) : ErectionRate.piecesADay(rate);
    Timetable t = timetable(MONDAY.plusHours(hoursLater), some);
    assertThat(t.laidBy(t.ends(place))).isEqualTo(place + 1);
    assertThat(t.laidBy(t.ends(place).minusSeconds(1))).isEqualTo(place);
    assertThat(t.begins(place + 1)).isAfterOrEqualTo(t.ends(place));
    assertThat(WorkCalendar.usual().crewDaysBetween(t.begins(0), t.ends(place)))
        .isCloseTo(t.crewDays(0, place + 1), within(1e-4));
  }

  @Test
  void refusesACrewThatLaysNothing() {
    assertThatThrownBy(() -> ErectionRate.piecesADay(0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ErectionRate.coursesADay(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Loads come on Friday the 9th and later; unloading takes that day, the weekend is free. */
  @Test
  void wallsAreBegunOnTheFirstWorkDayAfterTheFirstLoad() {
    Load late = new Load("L1", at(13, 8, 0), "truck");
    Load early = new Load("L2", at(9, 8, 0), "truck");
    WorkCalendar usual = WorkCalendar.usual();
    assertThat(Schedule.usualBegin(List.of(late, early), usual)).isEqualTo(at(12, 7, 0));
    assertThat(Schedule.usualBegin(List.of(late), usual)).isEqualTo(at(14, 7, 0));
    assertThat(Schedule.usualBegin(List.of(), usual).toLocalDate())
        .isEqualTo(LocalDate.EPOCH.plusDays(1));
  }
}
