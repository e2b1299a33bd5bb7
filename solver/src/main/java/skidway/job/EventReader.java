package skidway.job;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import skidway.progress.Event;

/** Reads the JSON object of one event. Whether it can have happened is for the fold to say. */
final class EventReader {
  private static final int MOST_MARKS = 200_000;
  private static final List<String> KINDS =
      List.of(
          "arrived", "placed", "moved", "missing", "damaged", "extra", "found", "late", "pulled",
          "undo");

  private final Fields f;
  private final int seq;
  private final String jobName;
  private final String check;

  /**
   * @param seq the number that the event must have
   * @param check the line's check value, judged before
   */
  EventReader(Fields f, int seq, String jobName, String check) {
    this.f = f;
    this.seq = seq;
    this.jobName = jobName;
    this.check = check;
  }

  Optional<EventLog.Entry> entry() {
    f.has("check");
    checkSeq();
    LocalDateTime at = time("at");
    String by = Plain.line(f, "by");
    String kind = KINDS.get(f.choice("kind", KINDS));
    Supplier<Event> event = event(kind, at, by);
    Optional<PlanMark> plan = f.object("plan", "plan").flatMap(EventReader::plan);
    checkJob();
    return f.finish(() -> new EventLog.Entry(event.get(), plan.orElseThrow(), check));
  }

  private Supplier<Event> event(String kind, LocalDateTime at, String by) {
    return switch (kind) {
      case "arrived" -> of(f.reference("load"), id -> new Event.Arrived(seq, at, by, id));
      case "missing" -> of(noted(), n -> new Event.Missing(seq, at, by, n.id(), n.note()));
      case "damaged" -> of(noted(), n -> new Event.Damaged(seq, at, by, n.id(), n.note()));
      case "extra" -> extra(f.reference("load"), noted(), at, by);
      case "found" -> of(f.reference("id"), id -> new Event.Found(seq, at, by, id));
      case "late" -> late(f.reference("load"), time("until"), at, by);
      case "pulled" -> pulled(Plain.lineOrNothing(f, "through"), marks(), at, by);
      case "undo" -> of(Plain.whole(f, "undone", 1), n -> new Event.Undo(seq, at, by, n));
      default -> put(kind, f.reference("bundle"), f.reference("spot"), at, by);
    };
  }

  private static <T> Supplier<Event> of(T value, Function<T, Event> event) {
    return () -> event.apply(value);
  }

  private record Noted(String id, String note) {}

  private Noted noted() {
    return new Noted(f.reference("id"), Plain.lineOrNothing(f, "note"));
  }

  private Supplier<Event> extra(String load, Noted noted, LocalDateTime at, String by) {
    return () -> new Event.Extra(seq, at, by, load, noted.id(), noted.note());
  }

  private Supplier<Event> late(String load, LocalDateTime until, LocalDateTime at, String by) {
    return () -> new Event.Late(seq, at, by, load, until);
  }

  private Supplier<Event> pulled(String through, List<String> marks, LocalDateTime at, String by) {
    return () -> new Event.Pulled(seq, at, by, through, marks);
  }

  private Supplier<Event> put(
      String kind, String bundle, String spot, LocalDateTime at, String by) {
    int tier = Plain.whole(f, "tier", 0);
    return kind.equals("placed")
        ? () -> new Event.Placed(seq, at, by, bundle, spot, tier)
        : () -> new Event.Moved(seq, at, by, bundle, spot, tier);
  }

  private List<String> marks() {
    List<String> marks = new ArrayList<>();
    for (LocatedNode node : f.items("pieces", 1, MOST_MARKS)) {
      if (node instanceof LocatedNode.Text text && Names.isId(text.value().strip())) {
        marks.add(text.value().strip());
      } else {
        f.report(node.place(), node.words() + " in \"pieces\"", Names.ALLOWED, "correct it");
      }
    }
    return marks;
  }

  private void checkSeq() {
    int found = Plain.whole(f, "seq", 1);
    if (f.sound() && found != seq) {
      f.report(
          f.at("seq"),
          "event " + found,
          "events are numbered from 1 without a gap, so this one is " + seq,
          EventsFile.PUT_BACK);
    }
  }

  private void checkJob() {
    String found = Plain.line(f, "job");
    if (f.sound() && !found.equals(jobName)) {
      f.report(
          f.at("job"),
          "an event of the job \"" + Quote.shortened(found) + '"',
          "this folder is of the job \"" + jobName + '"',
          "move " + EventsFile.NAME + " to the folder it belongs to, or put the job's name back");
    }
  }

  private LocalDateTime time(String name) {
    String allowed = '"' + name + "\" is a date and time of day such as 2031-05-12T08:00";
    Optional<LocatedNode.Text> text = f.typed(name, LocatedNode.Text.class, allowed);
    try {
      return text.map(t -> LocalDateTime.parse(t.value())).orElse(LocalDateTime.MIN);
    } catch (DateTimeParseException e) {
      f.wrong(name, text.orElseThrow(), allowed);
      return LocalDateTime.MIN;
    }
  }

  private static Optional<PlanMark> plan(Fields f) {
    int revision = Plain.whole(f, "revision", 1);
    String fingerprint = Plain.line(f, "fingerprint");
    return f.finish(() -> new PlanMark(revision, fingerprint));
  }
}
