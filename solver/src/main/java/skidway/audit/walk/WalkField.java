package skidway.audit.walk;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import skidway.site.Point;

/** How people walk while certain walls stand. Several threads may ask at once. */
final class WalkField {
  /** How far from a place an open cell may lie to stand for it. */
  private static final double NEAR_M = 0.5;

  /** How many cells off a point is measured from. */
  private static final double AROUND_CELLS = 2;

  private final WalkGrid grid;
  private final Levels levels;
  private final Moves moves;
  private final byte[] closed;
  private final byte[] level;
  private final int[] allowed;
  private final ClosedWalls walls;
  private final Map<Point, int[]> openCells = new ConcurrentHashMap<>();
  private final List<Climb> climbs;
  private final double unitM;

  WalkField(WalkGrid grid, Levels levels, byte[] closed, ClosedWalls walls, List<Stair> stairs) {
    this.grid = grid;
    this.levels = levels;
    this.closed = closed;
    this.walls = walls;
    moves = new Moves(grid.columns());
    level = levels.draw(grid);
    allowed = moves.allowed(grid, closed, level);
    unitM = grid.cellM() / (Moves.PER_CELL * Moves.MEAN_STRETCH);
    climbs =
        stairs.stream()
            .filter(stair -> !walls.cut(stair.foot(), stair.top()))
            .map(this::climb)
            .flatMap(Optional::stream)
            .toList();
  }

  private Optional<Climb> climb(Stair stair) {
    int[] foot = openCells(stair.foot());
    int[] top = openCells(stair.top());
    return foot.length == 0 || top.length == 0
        ? Optional.empty()
        : Optional.of(
            new Climb(
                nearest(foot, stair.foot()),
                nearest(top, stair.top()),
                (int) Math.round(stair.walkM() / unitM)));
  }

  private int nearest(int[] cells, Point p) {
    int nearest = cells[0];
    for (int cell : cells) {
      if (grid.middle(cell).distanceTo(p) < grid.middle(nearest).distanceTo(p)) {
        nearest = cell;
      }
    }
    return nearest;
  }

  /**
   * Metres of walk from a point to each of some places, each told by where people can stand for it;
   * infinite where nobody gets to.
   */
  double[] metres(Point from, List<List<LayingPoint>> places) {
    Goals goals = new Goals(unitM, places.size());
    for (int place = 0; place < places.size(); place++) {
      for (LayingPoint side : places.get(place)) {
        for (int cell : openCells(side.at())) {
          double offM = grid.middle(cell).distanceTo(side.at());
          goals.add(cell, place, offM, side.extraM());
        }
      }
    }
    WalkFlood flood = new WalkFlood(moves, allowed, climbs);
    for (int cell : openCells(from)) {
      flood.begin(cell, (int) Math.round(grid.middle(cell).distanceTo(from) / unitM));
    }
    flood.spread(goals);
    return goals.nearestM();
  }

  /**
   * The open cells around a point on its own level and on its own side of every wall; several, so
   * that a point between cells is measured from the one on its way. Where none is at hand, the
   * nearest.
   */
  private int[] openCells(Point p) {
    return openCells.computeIfAbsent(p, at -> findOpenCells(at).toArray());
  }

  private IntStream findOpenCells(Point p) {
    byte own = levels.at(p);
    int[] around = open(p, AROUND_CELLS * grid.cellM(), own).toArray();
    return around.length > 0
        ? IntStream.of(around)
        : open(p, NEAR_M, own)
            .boxed()
            .min(
                Comparator.comparingDouble((Integer cell) -> grid.middle(cell).distanceTo(p))
                    .thenComparing(Comparator.naturalOrder()))
            .stream()
            .mapToInt(Integer::intValue);
  }

  private IntStream open(Point p, double withinM, byte own) {
    return grid.near(p, withinM, near -> true).stream()
        .filter(cell -> closed[cell] == 0 && level[cell] == own)
        .filter(cell -> !walls.cut(p, grid.middle(cell)));
  }
}
