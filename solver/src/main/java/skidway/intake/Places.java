package skidway.intake;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * The places of walls that pieces have, so that pieces without a position get the next free one,
 * counted from the left in the list's order.
 */
final class Places {
  private final Set<String> taken = new HashSet<>();
  private final Map<String, Integer> next = new HashMap<>();
  private int counted;

  void take(String wall, int course, int position) {
    taken.add(key(wall, course, position));
  }

  /** The next free position of a course. */
  int next(String wall, int course) {
    String row = wall + "\n" + course;
    int position = next.getOrDefault(row, 1);
    while (taken.contains(key(wall, course, position))) {
      position++;
    }
    next.put(row, position + 1);
    take(wall, course, position);
    counted++;
    return position;
  }

  /** How many positions were counted rather than read. */
  int counted() {
    return counted;
  }

  private static String key(String wall, int course, int position) {
    return wall + "\n" + course + "\n" + position;
  }
}
