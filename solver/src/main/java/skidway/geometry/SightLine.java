package skidway.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight way between two bends of an area that a shortest path may take: both ends see each
 * other and it only grazes both corners. Leaving out the ways that run into a corner keeps the
 * graph small and loses no shortest path.
 *
 * @param from index into {@link FreeArea#bends}
 * @param to index into the same, higher
 */
record SightLine(int from, int to, double metres) {
  static List<SightLine> of(FreeArea area) {
    int[] bends = area.bends();
    List<SightLine> lines = new ArrayList<>();
    for (int i = 0; i < bends.length; i++) {
      long ax = area.x(bends[i]);
      long ay = area.y(bends[i]);
      for (int j = i + 1; j < bends.length; j++) {
        long bx = area.x(bends[j]);
        long by = area.y(bends[j]);
        if (area.grazes(ax, ay, bends[j])
            && area.grazes(bx, by, bends[i])
            && area.sees(ax, ay, bx, by)) {
          lines.add(new SightLine(i, j, Grid.metres(bx - ax, by - ay)));
        }
      }
    }
    return List.copyOf(lines);
  }
}
