package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import skidway.progress.Event;
import skidway.progress.EventWords;
import skidway.progress.Progress;

/** Lists recorded events; one taken back says by which. */
final class EventTable {
  private static final int WORDS = 56;

  private EventTable() {}

  static List<String> lines(Progress progress) {
    return lines(progress.events(), progress.undone());
  }

  static List<String> lines(List<Event> events, Map<Integer, Integer> undone) {
    TextTable table = new TextTable(">no.", "when", "who", "what", "").narrow(3, WORDS);
    for (Event event : events) {
      Integer by = undone.get(event.seq());
      table.row(
          Integer.toString(event.seq()),
          EventWords.time(event.at()),
          event.by(),
          EventWords.of(event),
          by == null ? "" : "undone by " + by);
    }
    return new ArrayList<>(table.lines());
  }
}
