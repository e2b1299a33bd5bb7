package skidway.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import skidway.progress.Event;

/**
 * Reads and adds to {@code events.jsonl} of a job: one JSON object a line, added and never edited.
 * Killed at any moment, {@code record} loses at most the event it was writing.
 */
public final class EventsFile {
  public static final String NAME = "events.jsonl";

  /** Where the beginning of an event goes whose recording was broken off. */
  static final String TORN = "events.torn";

  static final String PUT_BACK =
      "put the file back from a copy of the folder; or move it elsewhere and record anew what holds";

  private static final int MOST_BYTES = 32_000_000;

  /** Writing takes far less; somebody who waits longer wants to know. */
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  /** Decides, with nobody else writing, what is to be recorded. */
  public interface Recording {
    /** The events to add, numbered on from those there; whatever it throws, nothing is written. */
    List<Event> next(EventLog log);
  }

  private EventsFile() {}

  /**
   * Reads all events; none when there is no file. Writes nothing: an unfinished last line is left
   * out with a remark.
   *
   * @throws BadInput with every line that is not as it was written
   */
  public static EventLog read(Job job) {
    Problems problems = new Problems();
    return log(lines(job, problems), problems);
  }

  /**
   * Adds events, each safe on the disk before the next is written.
   *
   * @param plan the newest plan, which the events are about
   * @return the events added
   * @throws BadInput with every line that is not as it was written
   * @throws NotWritten if another writer is at work for long or the disk refuses; the file is then
   *     as before
   */
  public static List<Event> append(Job job, PlanMark plan, Recording recording) {
    return append(job, plan, recording, PATIENCE);
  }

  /** The same for somebody who waits no longer than this for another writer. */
  static List<Event> append(Job job, PlanMark plan, Recording recording, Duration patience) {
    Path plans = PlanFiles.plans(job.folder());
    try (WriteLock lock = WriteLock.of(plans, patience)) {
      Problems problems = new Problems();
      EventLines lines = lines(job, problems);
      List<Event> next = recording.next(log(lines, problems));
      if (!next.isEmpty()) {
        write(lock, job, lines, sealed(next, plan, job.task().jobName(), lines));
      }
      return next;
    } catch (IOException e) {
      throw new NotWritten(
          job.folder().resolve(NAME),
          "it cannot be written to (" + DiskWords.of(e) + ")",
          "look whether the folder may be written to and the disk has room; what was recorded"
              + " before is safe",
          e);
    }
  }

  private static List<String> sealed(
      List<Event> events, PlanMark plan, String jobName, EventLines lines) {
    List<String> sealed = new ArrayList<>();
    String check = lines.lastCheck();
    int seq = lines.entries().size();
    for (Event event : events) {
      if (event.seq() != ++seq) {
        throw new IllegalArgumentException("The next event must have the number " + seq + '.');
      }
      String line = EventSeal.seal(EventText.of(event, plan, jobName), check);
      check = EventSeal.of(line).orElseThrow().check();
      sealed.add(line);
    }
    return sealed;
  }

  private static void write(WriteLock lock, Job job, EventLines lines, List<String> sealed)
      throws IOException {
    Path torn = job.folder().resolve(TORN);
    try (AppendedFile file = lock.open(job.folder().resolve(NAME))) {
      file.setAside(lines.soundLength(), torn);
      file.append(sealed, lines.lineEndMissing());
    }
  }

  private static EventLog log(EventLines lines, Problems problems) {
    return new EventLog(lines.entries(), problems.remarks(List.of(NAME)));
  }

  private static EventLines lines(Job job, Problems problems) {
    EventLines lines =
        EventLines.read(bytes(job.folder(), problems), job.task().jobName(), problems);
    problems.throwIfAny(List.of(NAME));
    return lines;
  }

  private static byte[] bytes(Path folder, Problems problems) {
    Path path = folder.resolve(NAME);
    Place whole = new SourceFile(NAME, "").whole();
    String allowed = NAME + " is a file of at most " + MOST_BYTES / 1_000_000 + " MB";
    try {
      if (Files.notExists(path)) {
        return new byte[0];
      }
      if (!Files.isRegularFile(path)) {
        problems.add(whole, "something that is no file", allowed, "move it elsewhere");
      } else if (Files.size(path) > MOST_BYTES) {
        problems.add(whole, Files.size(path) + " bytes", allowed, PUT_BACK);
      } else {
        return Files.readAllBytes(path);
      }
    } catch (IOException e) {
      problems.add(
          whole,
          "a file that cannot be read (" + DiskWords.of(e) + ")",
          allowed,
          "give yourself the right to read it, or look after the disk");
    }
    return new byte[0];
  }

  static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
