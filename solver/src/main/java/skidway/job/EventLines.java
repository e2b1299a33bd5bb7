package skidway.job;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.units.UnitSystem;

/**
 * What the bytes of an events file hold: its events, and at the end perhaps the beginning of one
 * that was never finished. Everything else that is not as it was written is a problem; nothing is
 * guessed.
 */
final class EventLines {
  private static final String NEVER_EDITED =
      EventsFile.NAME
          + " is written by 'record' alone; each line holds the check of the one before";

  private final byte[] bytes;
  private final String jobName;
  private final Problems problems;
  private final SourceFile file;
  private final List<EventLog.Entry> entries = new ArrayList<>();

  /** The last line's check, or an empty text when it could not be read. */
  private Optional<String> checkBefore = Optional.of(EventSeal.START);

  /** Bytes up to the end of the last finished line. */
  private int soundLength;

  private boolean lineEndMissing;

  private EventLines(byte[] bytes, String jobName, Problems problems) {
    this.bytes = bytes;
    this.jobName = jobName;
    this.problems = problems;
    this.file = new SourceFile(EventsFile.NAME, new String(bytes, StandardCharsets.UTF_8));
  }

  static EventLines read(byte[] bytes, String jobName, Problems problems) {
    EventLines lines = new EventLines(bytes, jobName, problems);
    lines.read();
    return lines;
  }

  List<EventLog.Entry> entries() {
    return entries;
  }

  /** The check on which the next line builds. */
  String lastCheck() {
    return checkBefore.orElseThrow();
  }

  int soundLength() {
    return soundLength;
  }

  /** Whether the last event is whole but for the line's end. */
  boolean lineEndMissing() {
    return lineEndMissing;
  }

  private void read() {
    int line = 1;
    int start = 0;
    for (int end = 0; end < bytes.length; end++) {
      if (bytes[end] == '\n') {
        finished(text(start, end), line++);
        start = end + 1;
      }
    }
    soundLength = start;
    if (start < bytes.length) {
      unfinished(start, line);
    }
  }

  /** The text of some bytes; empty when they are none. */
  private Optional<String> text(int from, int to) {
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .decode(ByteBuffer.wrap(bytes, from, to - from))
              .toString();
      return Optional.of(text.endsWith("\r") ? text.substring(0, text.length() - 1) : text);
    } catch (CharacterCodingException e) {
      return Optional.empty(); // reported or set aside as any other line that is not whole
    }
  }

  private void finished(Optional<String> text, int line) {
    Optional<EventSeal> seal = text.flatMap(EventSeal::of);
    if (seal.isEmpty()) {
      broken(file.at(line, 1), "a line that is no whole event");
      checkBefore = Optional.empty();
      return;
    }
    if (checkBefore.isPresent() && !seal.get().holds(checkBefore.get())) {
      broken(
          file.at(line, seal.get().content().length() + 1),
          "a check that fits neither the line nor what stands before it");
    } else {
      event(line, seal.get().check());
    }
    checkBefore = seal.map(EventSeal::check);
  }

  private void event(int line, String check) {
    JsonTree.readLine(file, line, problems)
        .map(tree -> new Fields(tree, "an event", new Values(problems, UnitSystem.METRIC, true)))
        .map(fields -> new EventReader(fields, line, jobName, check))
        .flatMap(EventReader::entry)
        .filter(entry -> entry.event().seq() == line)
        .ifPresent(entries::add);
  }

  /** The last line without an end: whole, begun, or spoiled. */
  private void unfinished(int start, int line) {
    String shown = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
    if (EventSeal.of(shown).isPresent() || EventSeal.goesOn(shown)) {
      finished(text(start, bytes.length), line);
      soundLength = bytes.length;
      lineEndMissing = true;
      return;
    }
    problems.remark(
        file.at(line, 1),
        "the beginning of an event that was never finished",
        "a line is written whole before 'record' says so",
        "record again what is not in the list; the beginning is kept in " + EventsFile.TORN);
  }

  private void broken(Place place, String found) {
    problems.add(place, found, NEVER_EDITED, EventsFile.PUT_BACK);
  }
}
