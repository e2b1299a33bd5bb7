package skidway.job;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import skidway.units.Nearest;

/**
 * The ids of one kind of thing: refuses a second one of the same id, and names that are not there.
 * If the things could not all be read, no name counts as unknown, so that one mistake is not
 * reported again wherever it is referred to.
 */
final class Ids {
  private final String kind;
  private final Problems problems;
  private final Map<String, Place> places = new HashMap<>();
  private final Set<String> names = new LinkedHashSet<>();
  private boolean complete = true;

  Ids(String kind, Problems problems) {
    this.kind = kind;
    this.problems = problems;
  }

  /** Takes an id; the second of its kind is a problem. */
  void register(String id, Place place) {
    if (id.isEmpty()) {
      incomplete();
      return;
    }
    Place first = places.putIfAbsent(id, place);
    if (first == null) {
      names.add(id);
    } else {
      incomplete(); // one of the two is meant to have another id, which may be referred to
      problems.add(
          place,
          "a second " + kind + " \"" + id + "\"",
          "the first is in " + first.words() + ", and every " + kind + " has its own id",
          "give one of them another id");
    }
  }

  String kind() {
    return kind;
  }

  void incomplete() {
    complete = false;
  }

  /** Reports a reference to something that is not there. */
  void require(String id, Place place, String wayOut) {
    if (complete && !id.isEmpty() && !names.contains(id)) {
      String hint = problems.full() ? "" : Nearest.hint(id, names);
      problems.add(place, "unknown " + kind + " \"" + id + "\"" + hint, allowed(), wayOut);
    }
  }

  Set<String> names() {
    return names;
  }

  private String allowed() {
    if (names.isEmpty()) {
      return "this job has no " + kind;
    }
    String some = String.join(", ", names.stream().limit(8).toList());
    return Words.a(kind) + " is one of " + some + (names.size() > 8 ? ", ..." : "");
  }
}
