package skidway.erection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import skidway.site.Wall;

/**
 * How high a wall stands: all its timbers up to and with a course are laid.
 *
 * @param course the highest whole course; 0 when the first is not whole
 * @param begunCourse the highest course of which something is laid, between openings say; 0 for
 *     none
 * @param topCourse its last course
 */
public record WallReach(Wall wall, int course, int begunCourse, int topCourse) {
  /**
   * Of every wall that has pieces, in the order in which they are begun.
   *
   * @param order all pieces in pull order
   * @param laid whether a piece is laid, by its pull index
   */
  static List<WallReach> of(List<Placement> order, IntPredicate laid) {
    Map<String, TreeMap<Integer, Boolean>> whole = new TreeMap<>();
    Map<String, Integer> begun = new TreeMap<>();
    List<Wall> walls = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      Wall wall = order.get(i).wall();
      if (!whole.containsKey(wall.id())) {
        walls.add(wall);
      }
      whole
          .computeIfAbsent(wall.id(), w -> new TreeMap<>())
          .merge(order.get(i).piece().course(), laid.test(i), Boolean::logicalAnd);
      begun.merge(wall.id(), laid.test(i) ? order.get(i).piece().course() : 0, Math::max);
    }
    return walls.stream()
        .map(w -> of(w, whole.getOrDefault(w.id(), new TreeMap<>()), begun.getOrDefault(w.id(), 0)))
        .toList();
  }

  private static WallReach of(Wall wall, TreeMap<Integer, Boolean> whole, int begun) {
    int course = 0;
    for (Map.Entry<Integer, Boolean> next : whole.entrySet()) {
      if (!next.getValue()) {
        break;
      }
      course = next.getKey();
    }
    return new WallReach(wall, course, begun, whole.lastKey());
  }

  public boolean isWhole() {
    return course == topCourse;
  }
}
