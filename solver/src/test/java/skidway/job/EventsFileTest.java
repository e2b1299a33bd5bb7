package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.plan.Task;
import skidway.progress.Event;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

final class EventsFileTest {
  private static final LocalDateTime AT = LocalDateTime.of(2031, 5, 5, 8, 0);
  private static final PlanMark PLAN = new PlanMark(1, "ab12");

  /** One event of each kind, with what is awkward in JSON. */
  private static final List<Event> ALL =
      List.of(
          new Event.Arrived(1, AT, "Ann \"the crane\" Ö.", "L1"),
          new Event.Placed(2, AT, "Ann", "B1", "north yard", 1),
          new Event.Moved(3, AT.plusMinutes(1), "Ann", "B1", "R\\1", 0),
          new Event.Missing(4, AT, "Ann", "B2"),
          new Event.Damaged(5, AT, "Ann", "W1-C1-1", "split \"left\" end"),
          new Event.Found(6, AT, "Ann", "B2"),
          new Event.Late(7, AT, "Ann", "L2", AT.plusDays(3)),
          new Event.Pulled(8, AT, "Ann", "W1-C01", List.of("W1-C1-2", "W1-C1-3")),
          new Event.Undo(9, AT, "Ann", 3),
          new Event.Extra(10, AT, "Ann", "L1", "B 99", "=3 timbers"));

  @TempDir Path folder;
  private Job job;
  private Path file;

  @BeforeEach
  void emptyJob() throws IOException {
    job = job("test job");
    file = folder.resolve("events.jsonl");
    Files.createDirectories(folder.resolve("plans"));
  }

  private Job job(String name) {
    var task = Tasks.task(SiteBuilder.aSite().build());
    var named = new Task(name, task.site(), task.delivery(), task.settings(), task.figures());
    return new Job(folder, named, "", List.of());
  }

  private void add(List<Event> events) {
    EventsFile.append(job, PLAN, log -> events);
  }

  private List<Event> read() {
    return EventsFile.read(job).events();
  }

  private List<Problem> problems() {
    return catchThrowableOfType(BadInput.class, this::read).problems();
  }

  @Test
  void readsBackWhatItWrites() {
    assertThat(read()).isEmpty();
    assertThat(file).doesNotExist();
    add(ALL.subList(0, 4));
    add(ALL.subList(4, ALL.size()));
    assertThat(read()).isEqualTo(ALL);
    assertThat(EventsFile.read(job).entries()).allMatch(e -> e.plan().equals(PLAN));
    assertThat(EventsFile.read(job).remarks()).isEmpty();
  }

  @Test
  void aLineSaysEverythingInAFixedOrder() throws IOException {
    add(ALL.subList(0, 2));
    assertThat(Files.readAllLines(file).get(1))
        .matches(
            "\\{\"seq\":2,\"at\":\"2031-05-05T08:00\",\"by\":\"Ann\",\"kind\":\"placed\","
                + "\"bundle\":\"B1\",\"spot\":\"north yard\",\"tier\":1,"
                + "\"plan\":\\{\"revision\":1,\"fingerprint\":\"ab12\"},\"job\":\"test job\","
                + "\"check\":\"[0-9a-f]{16}\"}");
    String first = Files.readString(file);
    Files.delete(file);
    add(ALL.subList(0, 2));
    assertThat(file).hasContent(first.strip());
  }

  @Test
  void cutOffAnywhereItLosesNoMoreThanTheLastEvent() throws IOException {
    add(ALL);
    byte[] whole = Files.readAllBytes(file);
    int lines = 0;
    for (int length = 0; length <= whole.length; length++) {
      Files.write(file, Arrays.copyOf(whole, length));
      lines += length > 0 && whole[length - 1] == '\n' ? 1 : 0;
      EventLog log = EventsFile.read(job);
      boolean onlyTheEndIsMissing = length < whole.length && whole[length] == '\n' && length > 0;
      boolean between = length == 0 || whole[length - 1] == '\n';
      assertThat(log.events())
          .as("cut off after %d bytes", length)
          .isEqualTo(ALL.subList(0, onlyTheEndIsMissing ? lines + 1 : lines));
      assertThat(log.remarks()).hasSize(between || onlyTheEndIsMissing ? 0 : 1);
      assertThat(file).hasBinaryContent(Arrays.copyOf(whole, length));
    }
    assertThat(lines).isEqualTo(ALL.size());
  }

  @Test
  void goesOnAfterACutAndKeepsWhatWasCutOff() throws IOException {
    add(ALL);
    byte[] whole = Files.readAllBytes(file);
    Path torn = folder.resolve("events.torn");
    int lastLine = lastLine(whole);
    for (int length = lastLine - 2; length <= whole.length; length++) {
      if (length > lastLine + 3 && length < whole.length - 4 && length % 10 > 0) {
        continue; // each cut waits for the disk several times
      }
      Files.write(file, Arrays.copyOf(whole, length));
      Files.deleteIfExists(torn);
      int known = read().size();
      add(ALL.subList(known, ALL.size()));
      add(List.of(new Event.Undo(ALL.size() + 1, AT, "Ann", 9)));
      assertThat(read()).as("cut off after %d bytes", length).startsWith(ALL.toArray(Event[]::new));
      assertThat(Arrays.copyOf(Files.readAllBytes(file), whole.length)).isEqualTo(whole);
      int start = length;
      while (start > 0 && whole[start - 1] != '\n') {
        start--;
      }
      boolean tornOff = start < length && whole[length] != '\n';
      assertThat(Files.exists(torn)).as("cut off after %d bytes", length).isEqualTo(tornOff);
      if (tornOff) {
        byte[] tail = Arrays.copyOf(Arrays.copyOfRange(whole, start, length), length - start + 1);
        tail[length - start] = '\n';
        assertThat(torn).hasBinaryContent(tail);
      }
    }
  }

  private static int lastLine(byte[] whole) {
    int start = whole.length - 1;
    while (whole[start - 1] != '\n') {
      start--;
    }
    return start;
  }

  @Test
  void findsEveryChangedByte() throws IOException {
    add(ALL.subList(0, 4));
    byte[] whole = Files.readAllBytes(file);
    for (int at = 0; at < whole.length; at++) {
      for (int other : new int[] {whole[at] ^ 1, whole[at] ^ 0x20, '\n', ' ', 0, 0x80}) {
        if ((byte) other != whole[at]) {
          byte[] changed = whole.clone();
          changed[at] = (byte) other;
          Files.write(file, changed);
          assertThatThrownBy(this::read)
              .as("byte %d is %d", at, other)
              .isInstanceOf(BadInput.class)
              .hasMessageContaining("events.jsonl:")
              .hasMessageContaining("Way out");
        }
      }
    }
  }

  @Test
  void findsLinesTakenOutExchangedOrRepeated() throws IOException {
    add(ALL);
    List<String> lines = Files.readAllLines(file);
    List<String> without = new ArrayList<>(lines);
    without.remove(3);
    Files.write(file, without);
    assertThat(problems()).anyMatch(p -> p.line() == 4 && p.found().startsWith("a check that"));
    List<String> exchanged = new ArrayList<>(lines);
    exchanged.set(3, lines.get(4));
    exchanged.set(4, lines.get(3));
    Files.write(file, exchanged);
    assertThat(problems()).extracting(Problem::line).startsWith(4);
    List<String> twice = new ArrayList<>(lines);
    twice.add(lines.get(ALL.size() - 1));
    Files.write(file, twice);
    assertThat(problems())
        .singleElement()
        .matches(p -> p.line() == ALL.size() + 1 && p.column() > 100);
  }

  @Test
  void aBrokenLineInTheMiddleStopsWritingToo() throws IOException {
    add(ALL.subList(0, 3));
    String edited = Files.readString(file).replace("north yard", "south yard");
    Files.writeString(file, edited);
    assertThatThrownBy(() -> add(ALL.subList(3, 4)))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("events.jsonl:2:")
        .hasMessageContaining("put the file back from a copy of the folder");
    assertThat(file).hasContent(edited.strip());
  }

  @Test
  void otherLineEndsDoNoHarm() throws IOException {
    add(ALL);
    Files.writeString(file, Files.readString(file).replace("\n", "\r\n"));
    assertThat(read()).isEqualTo(ALL);
  }

  @Test
  void refusesEventsOfAnotherJob() {
    add(ALL.subList(0, 1));
    job = job("another job");
    assertThat(problems())
        .singleElement()
        .matches(p -> p.text().contains("an event of the job \"test job\"; this folder is of the"));
  }

  @Test
  void fieldsOfALaterVersionAreRemarkedOnAndKept() throws IOException {
    String object = EventText.of(ALL.get(0), PLAN, "test job").replaceFirst("}$", ",\"photo\":1}");
    Files.writeString(file, EventSeal.seal(object, EventSeal.START) + "\n");
    assertThat(read()).containsExactly(ALL.get(0));
    assertThat(EventsFile.read(job).remarks())
        .singleElement()
        .matches(p -> p.text().contains("unknown field \"photo\"") && p.line() == 1);
    add(ALL.subList(1, 2));
    assertThat(Files.readString(file)).contains("\"photo\":1");
  }

  @Test
  void anUnknownKindOrValueIsToldAtItsPlace() throws IOException {
    String object =
        EventText.of(ALL.get(1), PLAN, "test job")
            .replace("\"seq\":2", "\"seq\":1")
            .replace("placed", "plased")
            .replace("08:00", "8 am");
    Files.writeString(file, EventSeal.seal(object, EventSeal.START) + "\n");
    assertThat(problems())
        .extracting(Problem::text)
        .anyMatch(t -> t.contains("\"plased\" as \"kind\" (did you mean \"placed\"?)"))
        .anyMatch(t -> t.startsWith("events.jsonl:1:15: found \"2031-05-05T8 am\" as \"at\""));
  }

  @Test
  void aFolderInItsPlaceIsTold() throws IOException {
    Files.createDirectory(file);
    assertThat(problems()).singleElement().matches(p -> p.text().contains("move it elsewhere"));
    assertThatThrownBy(() -> add(ALL.subList(0, 1))).isInstanceOf(BadInput.class);
  }

  @Test
  void whatTheRecordingThrowsLeavesTheFileAlone() throws IOException {
    add(ALL.subList(0, 2));
    String before = Files.readString(file);
    EventsFile.Recording refusing =
        log -> {
          throw new IllegalStateException("refused");
        };
    assertThatThrownBy(() -> EventsFile.append(job, PLAN, refusing)).hasMessage("refused");
    assertThatThrownBy(() -> add(ALL.subList(5, 6))).isInstanceOf(IllegalArgumentException.class);
    EventsFile.append(job, PLAN, log -> List.of());
    assertThat(file).hasContent(before.strip());
  }

  @Test
  void aDiskThatRefusesIsTold() throws IOException {
    Files.delete(folder.resolve("plans"));
    assertThatThrownBy(() -> add(ALL.subList(0, 1)))
        .isInstanceOf(NotWritten.class)
        .hasMessageContaining("nothing was written. Way out:");
    assertThat(file).doesNotExist();
  }

  @Test
  void aSecondWriterWaitsForTheFirst() {
    var first =
        CompletableFuture.runAsync(
            () ->
                EventsFile.append(
                    job,
                    PLAN,
                    log -> {
                      pause(400);
                      return List.of(new Event.Arrived(log.events().size() + 1, AT, "a", "L1"));
                    }));
    pause(100);
    EventsFile.append(
        job, PLAN, log -> List.of(new Event.Arrived(log.events().size() + 1, AT, "b", "L2")));
    first.join();
    assertThat(read()).extracting(Event::by).containsExactlyInAnyOrder("a", "b");
  }

  @Test
  void aSecondWriterGivesUpAfterAWhile() throws IOException {
    try (FileChannel other =
            FileChannel.open(
                folder.resolve("plans/.lock"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE);
        var lock = other.lock()) {
      assertThat(lock.isValid()).isTrue();
      long start = System.nanoTime();
      Duration patience = Duration.ofMillis(300);
      assertThatThrownBy(() -> EventsFile.append(job, PLAN, log -> ALL.subList(0, 1), patience))
          .isInstanceOf(NotWritten.class)
          .hasMessageContaining("another writer is at work");
      assertThat(System.nanoTime() - start).isBetween(patience.toNanos(), 15_000_000_000L);
    }
    assertThat(file).doesNotExist();
  }

  private static void pause(long ms) {
    try {
      Thread.sleep(ms);
    } catch (InterruptedException e) {
      throw new IllegalStateException("Nobody interrupts this test.", e);
    }
  }
}
