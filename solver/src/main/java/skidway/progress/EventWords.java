package skidway.progress;

import java.time.LocalDateTime;
import skidway.units.Figures;

/** Says an event in the words in which it can be recorded. */
public final class EventWords implements Event.Cases<String> {
  private static final EventWords WORDS = new EventWords();

  private EventWords() {}

  /** For example {@code placed B07 at D3, tier 2}. */
  public static String of(Event event) {
    return event.match(WORDS);
  }

  /** For example {@code 2031-05-12 08:00}. */
  public static String time(LocalDateTime at) {
    return at.toString().replace('T', ' ');
  }

  /** For example {@code D3, tier 2}; in a rack the spot alone. */
  public static String place(String spotId, int tier) {
    return tier == 0 ? spotId : spotId + ", tier " + tier;
  }

  @Override
  public String arrived(Event.Arrived event) {
    return "arrived " + event.loadId();
  }

  @Override
  public String placed(Event.Placed event) {
    return "placed " + event.bundleId() + " at " + place(event.spotId(), event.tier());
  }

  @Override
  public String moved(Event.Moved event) {
    return "moved " + event.bundleId() + " to " + place(event.spotId(), event.tier());
  }

  @Override
  public String missing(Event.Missing event) {
    return "missing " + event.id() + noted(event.note());
  }

  @Override
  public String damaged(Event.Damaged event) {
    return "damaged " + event.id() + noted(event.note());
  }

  @Override
  public String extra(Event.Extra event) {
    return "extra " + event.id() + " on " + event.loadId() + noted(event.note());
  }

  private static String noted(String note) {
    return note.isEmpty() ? "" : " (" + note + ")";
  }

  @Override
  public String found(Event.Found event) {
    return "found " + event.id();
  }

  @Override
  public String late(Event.Late event) {
    return "late " + event.loadId() + " until " + time(event.until());
  }

  @Override
  public String pulled(Event.Pulled event) {
    int count = event.marks().size();
    String pieces = Figures.counted(count, "piece");
    return event.through().isEmpty()
        ? "pulled " + String.join(" ", event.marks())
        : "pulled through " + event.through() + " (" + pieces + ")";
  }

  @Override
  public String undo(Event.Undo event) {
    return "undo " + event.undone();
  }
}
