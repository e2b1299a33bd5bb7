package skidway.geometry;

import java.util.HashMap;
import java.util.Map;
import skidway.site.Point;

/**
 * A point somebody walks from or to, with the corners it sees. What it sees of an area is computed
 * once and kept, because most areas stay the same while walls rise.
 */
final class ViewPoint {
  private final Point at;
  private final long x;
  private final long y;
  private final Map<FreeArea, Sights> seen = new HashMap<>();

  ViewPoint(Point at) {
    this.at = at;
    x = Grid.of(at.x());
    y = Grid.of(at.y());
  }

  Point at() {
    return at;
  }

  boolean isIn(FreeArea area) {
    return area.contains(x, y);
  }

  double metresTo(ViewPoint other) {
    return Grid.metres(other.x - x, other.y - y);
  }

  boolean sees(ViewPoint other, FreeArea area) {
    return area.sees(x, y, other.x, other.y);
  }

  /** The corners seen that a shortest path may bend round, as indices of the area's bends. */
  Sights sights(FreeArea area) {
    return seen.computeIfAbsent(area, this::lookAround);
  }

  private Sights lookAround(FreeArea area) {
    int[] bends = area.bends();
    Sights found = new Sights(bends.length);
    for (int i = 0; i < bends.length; i++) {
      long bx = area.x(bends[i]);
      long by = area.y(bends[i]);
      if (area.grazes(x, y, bends[i]) && area.sees(x, y, bx, by)) {
        found.add(i, Grid.metres(bx - x, by - y));
      }
    }
    return found;
  }
}
