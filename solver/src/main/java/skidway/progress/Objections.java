package skidway.progress;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import skidway.units.Nearest;

/** Collects what speaks against one event, in sentences of one form. */
final class Objections {
  private final int seq;
  private final LocalDateTime at;
  private final List<Contradiction> found = new ArrayList<>();

  Objections(Event event) {
    this.seq = event.seq();
    this.at = event.at();
  }

  Objections add(String sentence, String wayOut) {
    found.add(new Contradiction(seq, sentence, wayOut));
    return this;
  }

  /** Objects to a name that is not there, and offers the nearest. */
  boolean unknown(String kind, String id, Collection<String> known, String wayOut) {
    if (known.contains(id)) {
      return false;
    }
    add("There is no " + kind + " \"" + id + '"' + Nearest.hint(id, known), wayOut);
    return true;
  }

  /**
   * Objects when the event is dated before another that it builds on.
   *
   * @param what the other one, as in {@code B07 was put down}
   */
  Objections before(LocalDateTime other, String what) {
    if (at.isBefore(other)) {
      add(
          what + " at " + EventWords.time(other) + ", after " + EventWords.time(at),
          "correct the time, or undo the earlier event and record it at the right one");
    }
    return this;
  }

  boolean none() {
    return found.isEmpty();
  }

  List<Contradiction> all() {
    return List.copyOf(found);
  }
}
