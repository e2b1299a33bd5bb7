package skidway.progress;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Works out which events are taken back, by which undo. */
public final class Undone {
  private Undone() {}

  /**
   * The number of each event that does not count, and of the undo that takes it back. The last
   * event always counts; whether an earlier one does, depends only on those after it.
   */
  public static Map<Integer, Integer> of(List<Event> events) {
    Map<Integer, Integer> undone = new HashMap<>();
    for (int i = events.size() - 1; i >= 0; i--) {
      if (events.get(i) instanceof Event.Undo undo && !undone.containsKey(undo.seq())) {
        undone.putIfAbsent(undo.undone(), undo.seq());
      }
    }
    return undone;
  }
}
