package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.erection.ErectionRate;
import skidway.erection.Schedule;
import skidway.erection.WorkCalendar;

/** The folder's only load arrives on Monday 5 May 2031 at 8 h. */
final class ErectionReaderTest {
  private static final String UNITS = "\"units\": \"us\",";

  @TempDir Path temp;

  private JobFolder with(String erection) {
    return JobFolder.in(temp)
        .replace("job.json", UNITS, UNITS + "\n  \"erection\": " + erection + ",");
  }

  private Schedule schedule(String erection) {
    Job job = JobReader.read(with(erection).path());
    assertThat(job.remarks()).isEmpty();
    return job.task().schedule();
  }

  @Test
  void aJobThatSaysNothingGoesByTheDefaults() {
    Schedule unsaid = JobReader.read(JobFolder.in(temp).path()).task().schedule();
    assertThat(unsaid)
        .isEqualTo(
            new Schedule(
                LocalDateTime.of(2031, 5, 6, 7, 0),
                ErectionRate.piecesADay(40),
                WorkCalendar.usual(),
                false));
    assertThat(schedule("{}")).isEqualTo(unsaid);
  }

  @Test
  void readsAllOfIt() {
    Schedule schedule =
        schedule(
            """
            {"begins": "2031-05-12", "rate": "1.5 courses/day", "days": "mon-thu, Sat",
             "hours": "6:30-15:00", "off": ["2031-05-29", "2031-06-02"]}""");
    assertThat(schedule.begins()).isEqualTo(LocalDateTime.of(2031, 5, 12, 6, 30));
    assertThat(schedule.rate()).isEqualTo(ErectionRate.coursesADay(1.5));
    assertThat(schedule.calendar().days())
        .containsExactly(
            DayOfWeek.MONDAY,
            DayOfWeek.TUESDAY,
            DayOfWeek.WEDNESDAY,
            DayOfWeek.THURSDAY,
            DayOfWeek.SATURDAY);
    assertThat(schedule.calendar().from()).isEqualTo(LocalTime.of(6, 30));
    assertThat(schedule.calendar().until()).isEqualTo(LocalTime.of(15, 0));
    assertThat(schedule.calendar().off())
        .containsExactly(LocalDate.of(2031, 5, 29), LocalDate.of(2031, 6, 2));
  }

  @Test
  void theDefaultBeginKeepsToTheCalendar() {
    assertThat(
            schedule(
                    "{\"days\": \"wed-fri\", \"off\": [\"2031-05-07\"], \"hours\": \"08:00-12:00\"}")
                .begins())
        .isEqualTo(LocalDateTime.of(2031, 5, 8, 8, 0));
  }

  @Test
  void workMayBeginAtATimeOfDay() {
    assertThat(schedule("{\"begins\": \"2031-05-05T12:30\"}").begins())
        .isEqualTo(LocalDateTime.of(2031, 5, 5, 12, 30));
  }

  @ParameterizedTest
  @CsvSource({
    "40 pieces/day, 40",
    "1 piece a day, 1",
    "12.5 pieces per day, 12.5",
    "60piece/day, 60"
  })
  void ratesAreWrittenAsPeopleSayThem(String text, double perDay) {
    assertThat(schedule("{\"rate\": \"" + text + "\"}").rate())
        .isEqualTo(ErectionRate.piecesADay(perDay));
  }

  @Test
  void theSettingSaysTheRateOfAJobThatHasNone() {
    JobFolder folder = with("{\"days\": \"mon-sat\"}");
    folder.replace("job.json", "\"stackHeight\": \"5 ft\"", "\"erectionRate\": 55");
    assertThat(JobReader.read(folder.path()).task().schedule().rate())
        .isEqualTo(ErectionRate.piecesADay(55));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          [1] | [1] | a list of 1 as "erection"; "erection" is an object in braces
          {"begins": "6 May 2031"} | "6 May | "6 May 2031" as "begins"; "begins" is a date such as 2031-05-06, or a date and time of day
          {"begins": "2031-02-29"} | "2031-02-29" | "2031-02-29" as "begins"
          {"begins": "+999999999-12-31"} | "+999 | in the years 2000 to 2199
          {"begins": 20310506} | 20310506 | the number 20310506 as "begins"
          {"rate": 40} | 40} | the number 40 as "rate"; "rate" is such as "40 pieces/day", 1 to 1000
          {"rate": "40"} | "40" | "40" as "rate"
          {"rate": "40 pieces/hour"} | "40 pieces | "40 pieces/hour" as "rate"
          {"rate": "0 pieces/day"} | "0 pieces | 1 to 1000
          {"rate": "1001 pieces/day"} | "1001 | 1 to 1000
          {"rate": "0.05 courses/day"} | "0.05 | or "1.5 courses/day", 0.1 to 50
          {"rate": "51 courses/day"} | "51 | 0.1 to 50
          {"rate": "1,5 courses/day"} | "1,5 | "1,5 courses/day" as "rate"
          {"days": "mo-fr"} | "mo-fr" | "mo-fr" as "days"; "days" are days of the week
          {"days": ""} | ""} | "" as "days"
          {"days": "mon-wed-fri"} | "mon-wed | as "days"
          {"days": ["mon"]} | ["mon"] | a list of 1 as "days"
          {"hours": "16:00-07:00"} | "16:00 | "16:00-07:00" as "hours"; "hours" is when work begins and ends on a day, such as "07:00-16:00"
          {"hours": "07:00-24:00"} | "07:00 | as "hours"
          {"hours": "7-16"} | "7-16" | as "hours"
          {"hours": "07:00-07:00"} | "07:00 | as "hours"
          {"off": "2031-05-29"} | "2031-05-29" | "2031-05-29" as "off"; "off" is a list in brackets
          {"off": ["2031-05-29", "whit monday"]} | "whit | "whit monday" in "off"; a day off is a date such as "2031-05-29"
          {"off": [29]} | 29] | the number 29 in "off"
          """)
  void refuses(String erection, String place, String message) {
    Spoiled.expect(with(erection), "job.json", place, message);
  }

  @Test
  void theRateStandsInOnePlace() {
    JobFolder folder = with("{\"rate\": \"50 pieces/day\"}");
    folder.replace("job.json", "\"stackHeight\": \"5 ft\"", "\"erectionRate\": 55");
    Spoiled.expect(
        folder, "job.json", "\"50 pieces", "a rate beside the setting \"erectionRate\"; how fast");
  }

  @Test
  void everyProblemIsTold() {
    assertThat(Spoiled.problems(with("{\"rate\": 1, \"days\": 2, \"hours\": 3, \"off\": [4, 5]}")))
        .hasSize(5);
  }

  @Test
  void remarksOnWallsBeforeTimberAndOnFieldsItDoesNotKnow() {
    Job job = JobReader.read(with("{\"begins\": \"2031-05-05\", \"holidays\": []}").path());
    assertThat(job.remarks())
        .extracting(Problem::text)
        .satisfiesExactly(
            begins ->
                assertThat(begins)
                    .contains(
                        "walls that go up before the first load arrives; it arrives on 2031-05-05"
                            + " at 08:00"),
            unknown -> assertThat(unknown).contains("an unknown field \"holidays\""));
  }
}
