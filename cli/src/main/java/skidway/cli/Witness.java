package skidway.cli;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import skidway.job.EventLog;
import skidway.progress.Event;
import skidway.progress.Undone;

/** Who says that something happened, and when it did. */
final class Witness {
  /** Longer names make the list unreadable. */
  private static final int LONGEST_NAME = 40;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description =
          "when it happened, site time: 2031-05-12T08:00, or 08:00 today (default: now); may be"
              + " before what was recorded last if all can have happened in the order of times")
  private @Nullable String at;

  @Option(
      names = "--by",
      paramLabel = "NAME",
      description = "who says so (default: the name of this computer's user)")
  private @Nullable String by;

  /** The clock is judged by what holds: an event dated wrongly and undone is forgotten. */
  LocalDateTime when(EventLog log, Clock clock) {
    List<Event> events = log.events();
    Map<Integer, Integer> undone = Undone.of(events);
    Optional<LocalDateTime> last =
        events.stream()
            .filter(event -> !(event instanceof Event.Undo) && !undone.containsKey(event.seq()))
            .map(Event::at)
            .max(LocalDateTime::compareTo);
    return SiteTime.happened(Optional.ofNullable(at), LocalDateTime.now(clock), last);
  }

  String who() {
    String name = Optional.ofNullable(by).orElseGet(() -> System.getProperty("user.name", ""));
    String plain = name.strip();
    boolean readable = plain.codePoints().noneMatch(Character::isISOControl);
    if (plain.isEmpty() || plain.length() > LONGEST_NAME || !readable) {
      throw new BadUsage(
          "'"
              + plain.replaceAll("\\p{Cntrl}", "?")
              + "' is no name for a list; nothing was recorded. Way out: say who you are with --by,"
              + " in 1 to "
              + LONGEST_NAME
              + " letters.");
    }
    return plain;
  }
}
