package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What might happen, what a new plan changes, and its moves done: on the cabin with L1 down. */
class RestageTest {
  private static final String[] EFFORT = {"--effort", "300"};

  @TempDir private Path temp;
  private Path job = Path.of("");

  @BeforeEach
  void stageTheCabin() {
    job = StagedCabin.copy(temp);
    assertThat(Shell.run("record", job.toString(), "arrived", "L1").code()).isZero();
    assertThat(Shell.run("record", job.toString(), "placed", "L1", "as", "planned").code())
        .isZero();
  }

  private Shell suppose(String... texts) {
    Stream<String> said = Stream.of(texts).flatMap(text -> Stream.of("--suppose", text));
    Stream<String> args = Stream.concat(Stream.of("restage", job.toString()), said);
    return Shell.run(Stream.concat(args, Stream.of(EFFORT)).toArray(String[]::new));
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(job)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(file.toString(), Files.readString(file));
      }
    }
    return files;
  }

  @Test
  void eachFutureHasItsRowAndNothingIsWritten() throws IOException {
    Map<String, String> before = files();
    Shell told = suppose("late L2 until +2d", "late L2 until 2031-06-20; missing L1-1");
    assertThat(told.code()).isEqualTo(2);
    assertThat(told.err()).contains("L1-1").contains("Nothing was recorded.");
    told = suppose("late L2 until +2d", "late L2 until +9d");
    assertThat(told.code()).as(told.err()).isZero();
    List<String> rows = told.out().lines().toList();
    assertThat(rows.get(0)).startsWith("What if").contains("hours lost", "tags");
    assertThat(rows.get(1)).startsWith("as recorded").contains("nothing", "all");
    assertThat(rows.get(2)).startsWith("late L2 until +2d");
    assertThat(rows.get(3)).startsWith("late L2 until +9d");
    assertThat(told.out()).contains("Nothing was recorded and no plan was written.");
    assertThat(hoursLost(rows.get(2))).isGreaterThan(0);
    // Seven more days, five of them working days from 07:00 to 16:00.
    assertThat(hoursLost(rows.get(3)) - hoursLost(rows.get(2))).isEqualTo(45);
    assertThat(files()).isEqualTo(before);
  }

  /** The third figure of a row; names are told apart from figures by two spaces. */
  private static double hoursLost(String row) {
    String cell = Stream.of(row.split(" {2,}", -1)).toList().get(3);
    return Double.parseDouble(cell.replace(" h", ""));
  }

  @Test
  void whatCannotBeReadOrCannotHappenIsRefused() {
    assertThat(suppose("late L9 until +2d").code()).isEqualTo(2);
    assertThat(suppose("late L9 until +2d").err()).contains("That was supposed: late L9");
    assertThat(suppose("rain").err()).contains("'rain' does not say what happened.");
    assertThat(suppose(" ; ").err()).contains("says nothing");
    assertThat(suppose("arrived L1").code()).isEqualTo(2);
  }

  /** One bundle was put elsewhere; the sheet of changes is written beside the sentences. */
  @Test
  void changesAreWrittenAsTheirNameSays() throws IOException {
    assertThat(Shell.run("record", job.toString(), "missing", "B09").code()).isZero();
    assertThat(Shell.run("restage", job.toString(), "--effort", "300").code()).isLessThan(2);
    Path page = temp.resolve("changes.html");
    Shell told = Shell.run("changes", job.toString(), "--out", page.toString());
    assertThat(told.code()).as(told.err()).isZero();
    assertThat(told.out()).contains("Change sheet: " + page);
    assertThat(page)
        .content()
        .contains("In short</h2>", "How far the crew can build</h2>", "Tags to take off", "<svg")
        .contains("load L1, came", "load L2, comes");
    Shell printed = Shell.run("print", job.toString(), "--no-pdf", "--only", "unload");
    assertThat(printed.out()).contains("Changes since revision 1: ");
    assertThat(job.resolve("out").resolve("changes-002.html")).hasSameTextualContentAs(page);
    Path map = temp.resolve("changes.svg");
    assertThat(Shell.run("changes", job.toString(), "--out", map.toString()).code()).isZero();
    assertThat(map).content().startsWith("<svg");
    Shell refused = Shell.run("changes", job.toString(), "--out", temp + "/changes.doc");
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains("must end in .html, .pdf or .svg");
    assertThat(temp.resolve("changes.doc")).doesNotExist();
    Shell nowhere = Shell.run("changes", job.toString(), "--out", temp + "/none/changes.svg");
    assertThat(nowhere.code()).isEqualTo(2);
    assertThat(nowhere.err()).contains("its folder is there");
  }

  /** A long search whose plan nobody could write would be time lost. */
  @Test
  void whereNothingCanBeWrittenNothingIsPlanned() throws IOException {
    assertThat(Shell.run("record", job.toString(), "missing", "B09").code()).isZero();
    try (FileChannel other =
            FileChannel.open(job.resolve("plans").resolve(".lock"), StandardOpenOption.WRITE);
        FileLock lock = other.lock()) {
      assertThat(lock.isValid()).isTrue();
      Shell told = Shell.run("restage", job.toString());
      assertThat(told.code()).isEqualTo(2);
      assertThat(told.err()).contains("another writer is at work").doesNotContain("Planning");
    }
  }

  @Test
  void aPlanOfAnotherJobIsRefused() throws IOException {
    Path plan = job.resolve("plans").resolve("001.json");
    Files.writeString(plan, Files.readString(plan).replace("Cabin at Fernhollow", "Barn"));
    Shell told = Shell.run("restage", job.toString(), "--effort", "300");
    assertThat(told.code()).isEqualTo(2);
    assertThat(told.err()).contains("001.json: found a plan of \"Barn\"; this job is called");
  }

  @Test
  void withoutTheEventsThatAPlanHeedsNothingIsPlanned() throws IOException {
    assertThat(Shell.run("restage", job.toString(), "--effort", "300").code()).isLessThan(2);
    List<String> events = Files.readAllLines(job.resolve("events.jsonl"));
    Files.write(job.resolve("events.jsonl"), events.subList(0, 1));
    Shell told = Shell.run("restage", job.toString(), "--effort", "300");
    assertThat(told.code()).isEqualTo(2);
    assertThat(told.err()).contains("found 1 event; revision 2 heeds " + events.size());
  }

  /** The same events told by somebody else are as many, but not those that the plan heeds. */
  @Test
  void withOtherEventsThanThoseThatAPlanHeedsNothingIsDone() throws IOException {
    Path events = job.resolve("events.jsonl");
    String heeded = Files.readString(events);
    assertThat(Shell.run("restage", job.toString(), "--effort", "300").code()).isLessThan(2);
    Files.delete(events);
    Files.move(job.resolve("plans/002.json"), temp.resolve("002.json"));
    assertThat(Shell.run("record", job.toString(), "arrived", "L1", "--by", "Ben").code()).isZero();
    assertThat(Shell.run("record", job.toString(), "placed", "L1", "as", "planned").code())
        .isZero();
    assertThat(Files.readString(events)).hasLineCount((int) heeded.lines().count());
    Files.copy(temp.resolve("002.json"), job.resolve("plans/002.json"));
    Map<String, String> before = files();
    for (List<String> command :
        List.of(
            List.of("restage"),
            List.of("restage", "--suppose", "late L2 until +2d"),
            List.of("changes"),
            List.of("audit"),
            List.of("print"),
            List.of("status"),
            List.of("waves"),
            List.of("receive", "L2"),
            List.of("read-tag", "text of no tag"),
            List.of("record", "missing", "B10"))) {
      List<String> args = new ArrayList<>(command);
      args.add(1, job.toString());
      Shell told = Shell.run(args.toArray(String[]::new));
      assertThat(told.code()).as(command + told.out()).isEqualTo(2);
      assertThat(told.err())
          .as(command.toString())
          .containsPattern(
              "events.jsonl:\\d+:1: found other events: the check of event \\d+ is [0-9a-f]{16};"
                  + " revision 2 heeds events 1 to \\d+, and the check of the last of them is")
          .contains("Way out: put the file that this plan was made from back");
    }
    assertThat(Shell.run("stage", job.toString()).err()).contains("Events are recorded");
    assertThat(files()).isEqualTo(before);
    Files.delete(job.resolve("plans/002.json"));
    assertThat(Shell.run("restage", job.toString(), "--effort", "300").code()).isLessThan(2);
  }

  /** Older plans do not say which events they heed. */
  @Test
  void aPlanThatOnlyCountsTheEventsThatItHeedsIsTaken() throws IOException {
    assertThat(Shell.run("restage", job.toString(), "--effort", "300").code()).isLessThan(2);
    Path plan = job.resolve("plans/002.json");
    String text = Files.readString(plan);
    assertThat(text).containsPattern("\"eventsCheck\": \"[0-9a-f]{16}\"");
    Files.writeString(plan, text.replaceFirst("\\s*\"eventsCheck\".*", ""));
    assertThat(Files.readString(plan)).doesNotContain("eventsCheck").contains("\"events\"");
    assertThat(Shell.run("audit", job.toString()).code()).isLessThan(2);
  }

  /** On an empty site stacks would be planned where others lie. */
  @Test
  void withoutTheEventsThatAPlanHeedsTheWholeJobIsNotPlannedEither() throws IOException {
    assertThat(Shell.run("restage", job.toString(), "--effort", "300").code()).isLessThan(2);
    Path events = job.resolve("events.jsonl");
    int heeded = Files.readAllLines(events).size();
    Files.delete(events);
    Files.copy(job.resolve("plans/001.json"), job.resolve("plans/003.json"));
    Path newest = job.resolve("plans/003.json");
    Files.writeString(newest, Files.readString(newest).replace("\"stacks\"", "\"heaps\""));
    Shell told = Shell.run("stage", job.toString(), "--effort", "300");
    assertThat(told.code()).isEqualTo(2);
    assertThat(told.err())
        .contains("events.jsonl: found no events; revision 2 heeds " + heeded)
        .contains("put the file back from a copy", "move its plans elsewhere");
    assertThat(job.resolve("plans/004.json")).doesNotExist();
    Files.delete(job.resolve("plans/002.json"));
    assertThat(Shell.run("stage", job.toString(), "--effort", "300").code()).isLessThan(2);
  }

  /** B01 is longer than B03, on which it was put by mistake, so the new plan lifts it off. */
  @Test
  void allMovesOfThePlanAreRecordedInOneLine() {
    assertThat(Shell.run("record", job.toString(), "moved").err())
        .contains("nothing that lies is left to be moved");
    String y5 = spotOf("B03");
    assertThat(Shell.run("record", job.toString(), "moved", "B01", "to", y5).code()).isZero();
    assertThat(Shell.run("restage", job.toString(), "--effort", "300").code()).isLessThan(2);
    Shell done = Shell.run("record", job.toString(), "moved", "as", "planned");
    assertThat(done.code()).as(done.err()).isZero();
    assertThat(done.out()).contains("moved B01 to").contains("Recorded.");
    assertThat(spotOf("B01")).isNotEqualTo(y5);
    Shell again = Shell.run("record", job.toString(), "moved");
    assertThat(again.code()).isEqualTo(2);
    assertThat(again.err()).contains("nothing that lies is left to be moved");
    assertThat(Shell.run("record", job.toString(), "moved", "B01", "as", "planned").err())
        .contains("takes no name or place");
  }

  private String spotOf(String bundleId) {
    return Shell.run("status", job.toString())
        .out()
        .lines()
        .filter(line -> line.startsWith(bundleId + " "))
        .map(line -> line.split(" +|,", -1)[2])
        .findFirst()
        .orElseThrow();
  }
}
