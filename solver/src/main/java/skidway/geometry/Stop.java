package skidway.geometry;

import org.jspecify.annotations.Nullable;

/**
 * A point on a {@link WalkingGraph}.
 *
 * @param area the walkable area it lies in; none when it lies inside an obstacle or off the site
 * @param nodes the nodes seen from it
 */
record Stop(ViewPoint view, @Nullable FreeArea area, Sights nodes) {
  static Stop nowhere(ViewPoint view) {
    return new Stop(view, null, new Sights(0));
  }

  boolean isWalkable() {
    return area != null;
  }
}
