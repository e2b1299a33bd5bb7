package skidway.audit.walk;

import java.util.List;
import java.util.stream.Stream;
import skidway.audit.plane.Polygon;
import skidway.site.KeepClear;
import skidway.site.Point;
import skidway.site.Site;

/**
 * Tells whether somebody can stand on a point: within the site, and not in a keep-clear that is not
 * walkable, in a floor opening or in what risen walls close. Asked of the shapes, not of cells.
 */
final class Ground {
  /** What somebody may stand beyond a line, to count as touching it only. */
  private static final double TOUCH_M = 0.001;

  private final Polygon boundary;
  private final List<Polygon> obstacles;
  private final ClosedWalls walls;

  Ground(Site site, ClosedWalls walls) {
    this.walls = walls;
    boundary = Polygon.of(site.boundary());
    obstacles =
        Stream.concat(
                site.keepClears().stream().filter(k -> !k.walkable()).map(KeepClear::outline),
                site.decks().stream().flatMap(d -> d.openings().stream()).map(o -> o.outline()))
            .map(Polygon::of)
            .toList();
  }

  boolean holds(Point p) {
    return boundary.distanceTo(p) <= TOUCH_M
        && !walls.hold(p)
        && obstacles.stream().noneMatch(obstacle -> isWithin(obstacle, p));
  }

  private static boolean isWithin(Polygon obstacle, Point p) {
    return obstacle.contains(p)
        && obstacle.sides().stream().allMatch(side -> side.distanceTo(p) > TOUCH_M);
  }
}
