package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.staging.StopButton;

/** Records a day on the cabin's site by a clock that stands still. */
class RecordTest {
  @TempDir private Path dir = Path.of("");
  private Path job = Path.of("");
  private String now = "2031-06-10T08:05:30";

  @BeforeEach
  void plan() {
    job = StagedCabin.copy(dir);
  }

  private Shell record(String sentence) {
    List<String> args = new ArrayList<>(List.of("record", job.toString(), "--by=Ann"));
    args.addAll(sentence.isEmpty() ? List.of() : List.of(sentence.split(" ")));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Screen screen = new Screen(new PrintWriter(out), new PrintWriter(err), false);
    Clock clock = Clock.fixed(Instant.parse(now + "Z"), ZoneOffset.UTC);
    int code = Main.run(screen, new StopButton(), clock, args.toArray(String[]::new));
    return new Shell(code, out.toString(), err.toString());
  }

  private String done(String sentence) {
    Shell shell = record(sentence);
    assertThat(shell.code()).as(sentence + "\n" + shell.err()).isEqualTo(ExitCode.FINE);
    return shell.out();
  }

  private String refused(String sentence) throws IOException {
    Path file = job.resolve("events.jsonl");
    String before = Files.exists(file) ? Files.readString(file) : "";
    Shell shell = record(sentence);
    assertThat(shell.code()).as(sentence).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.out()).isEmpty();
    assertThat(shell.err()).containsIgnoringCase("nothing was recorded").doesNotContain("at skid");
    assertThat(Files.exists(file) ? Files.readString(file) : "").isEqualTo(before);
    return shell.err();
  }

  @Test
  void aDayIsRecordedListedAndTold() {
    assertThat(done("")).contains("Nothing is recorded yet", "arrived LOAD");
    assertThat(done("arrived L1")).contains("1  2031-06-10 08:05  Ann  arrived L1", "Recorded.");
    assertThat(done("placed L1 as planned")).contains("undo 2-4").doesNotContain("Caution");
    assertThat(done("pulled --through W1-C01")).contains("pulled through W1-C01 (");
    assertThat(done("late L2 --until +3d")).contains("late L2 until 2031-06-13 13:00");
    assertThat(done("missing B09")).contains("missing B09");
    assertThat(done("undo")).contains("undo 7");
    assertThat(done("")).contains("undone by 8").doesNotContain("Recorded.");
    assertThat(done("state"))
        .isEqualTo(Shell.run("status", job.toString()).out())
        .containsPattern("L1 +arrived +2031-06-10 08:05 +2031-06-10 08:00 +3 +0 +3")
        .containsPattern("L2 +late +2031-06-13 13:00")
        .containsPattern("B09 +L2 +not here")
        .containsPattern("W1 +1 +2 +24 +W1-02-1");
    assertThat(Shell.run("status", job.toString(), "--csv").out())
        .startsWith("list,id,load,wall,state,")
        .contains("load,L2,,,late,2031-06-13T13:00", "piece,W1-01-1,L1,W1,pulled");
  }

  @Test
  void wordsComeInAnySensibleOrder() {
    done("arrived L1");
    assertThat(done("B03 placed tier 1 at Y5")).contains("placed B03 at Y5, tier 1");
    assertThat(done("placed bundle B02 Y6")).contains("placed B02 at Y6, tier 1");
    assertThat(done("moved to Y6 tier2 B03"))
        .contains("moved B03 to Y6, tier 2", "Caution: plan 1");
    done("damaged B03 B02");
    assertThat(done("undo 4-6")).contains("undo 6", "undo 5", "undo 4");
    assertThat(done("state")).containsPattern("B03 +L1 +Y5, tier 1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          fly | does not say what happened
          arrived | needs the name of a load
          arrived L1 at Y5 | takes no place for a spot
          arrived L7 | no load "L7" (did you mean
          placed B01 | needs one bundle and one spot
          placed B01 at | Nothing follows 'at'
          placed B01 at Y6 tier two | A tier is a whole number
          placed B01 at Y6 at Y5 | two words for 'at'
          placed B01 at Y6 | L1, which brings bundle B01, has not arrived
          placed B77 as planned | no load and no stacked bundle 'B77'
          late L1 | needs one load and until when
          late L1 until Tuesday | is no time to wait for
          pulled | needs either pieces or --through
          pulled --through W1-C99 | neither a piece's mark nor a wall's course
          undo | Nothing is recorded that could be undone
          undo 3 | There are no events 3; the list has 0
          undo all | needs numbers of the list
          arrived L1 --at=tomorrow | it is a date and time of day
          arrived L1 --at=2031-06-10T08:06 | by this computer's clock it is 2031-06-10 08:05
          """)
  void whatIsNotUnderstoodIsRefused(String sentence, String message) throws IOException {
    assertThat(refused(sentence)).contains(message);
    assertThat(job.resolve("events.jsonl")).doesNotExist();
  }

  @Test
  void muchIsRecordedInTheEvening() throws IOException {
    done("arrived L1 --at 08:00");
    now = "2031-06-10T18:00:00";
    done("missing B09");
    assertThat(done("placed L1 as planned --at 08:20")).contains("2031-06-10 08:20");
    assertThat(refused("damaged B03 --at 18:01")).contains("correct --at or the clock");
    now = "2031-06-10T17:00:00";
    assertThat(refused("damaged B03")).contains("set the clock, or say when it happened with --at");
    assertThat(done("damaged B03 --at 18:01")).contains("18:01");
  }

  @Test
  void allCanHaveHappenedInTheOrderOfItsTimes() throws IOException {
    done("late L2 --until +3d");
    assertThat(refused("arrived L2 --at 08:00"))
        .contains("With arrived L2 at 2031-06-10 08:00, event 1 (late L2 until 2031-06-13 13:00)")
        .contains("Way out: correct the time, or undo event 1 first.");
    done("undo");
    done("arrived L2 --at 08:00");
    assertThat(done("arrived L1 --at 07:50")).contains("2031-06-10 07:50");
    now = "2031-06-10T17:00:00";
    done("damaged B03");
    done("undo");
    now = "2031-06-10T12:00:00";
    assertThat(done("placed L1 as planned")).contains("12:00");
  }

  @Test
  void aLoadIsPlacedAsPlannedBarringWhatIsMissing() throws IOException {
    done("arrived L1");
    done("missing B03");
    Shell shell = record("placed L1 as planned");
    assertThat(shell.code()).isEqualTo(ExitCode.FINE);
    assertThat(shell.err()).contains("Left out: B03 is missing.");
    assertThat(refused("placed L1 as planned")).contains("nothing of load L1 is left");
  }

  @Test
  void aSpotThatAnotherPlanCallsTheSameIsNotTrusted() throws IOException {
    done("arrived L1");
    done("placed B03 at Y5");
    String first = Files.readString(job.resolve("plans/001.json"));
    String second =
        first
            .replace("\"revision\": 1", "\"revision\": 2")
            .replace("\"Y5\"", "\"?\"")
            .replace("\"Y6\"", "\"Y5\"")
            .replace("\"?\"", "\"Y6\"");
    Files.writeString(job.resolve("plans/002.json"), second);
    assertThat(record("state").err())
        .contains("B03 was put down at Y5 of plan 1; plan 2 calls another place Y5");
    Files.delete(job.resolve("plans/001.json"));
    assertThat(record("state").err()).contains("Plan 1 is gone since events were recorded");
  }

  @Test
  void anEditedLineIsFoundAndAnUnfinishedOneIsSetAside() throws IOException {
    done("arrived L1");
    Path file = job.resolve("events.jsonl");
    String sound = Files.readString(file);
    Files.writeString(file, sound + "{\"seq\":2,\"at");
    assertThat(record("").err()).contains("events.jsonl:2:1", "never finished");
    done("placed B03 at Y5");
    assertThat(job.resolve("events.torn")).hasContent("{\"seq\":2,\"at");
    assertThat(file).content().startsWith(sound);
    Files.writeString(file, sound.replace("L1", "L2"));
    Shell shell = record("arrived L1");
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err()).contains("events.jsonl:1:", "Way out: put the file back");
  }
}
