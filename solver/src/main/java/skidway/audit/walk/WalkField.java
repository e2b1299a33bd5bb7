package skidway.audit.walk;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import skidway.site.Point;

/** The walking distances from one point to every cell while certain walls stand. */
final class WalkField {
  /** How far from a place an open cell may lie to stand for it. */
  private static final double NEAR_M = 0.5;

  /** How many cells off a point is measured from. */
  private static final double AROUND_CELLS = 2;

  private static final int FAR = Integer.MAX_VALUE;

  private final WalkGrid grid;
  private final Levels levels;
  private final Moves moves;
  private final byte[] closed;
  private final byte[] level;
  private final short[] allowed;
  private final ClosedWalls walls;
  private final int[] distances;
  private final Map<Point, int[]> openCells = new HashMap<>();
  private final List<Climb> climbs;
  private final BitSet ofClimbs = new BitSet();
  private final double unitM;

  /** Steps between two cells, and the walk they count for. */
  private record Climb(int foot, int top, int length) {}

  WalkField(WalkGrid grid, Levels levels, byte[] closed, ClosedWalls walls, List<Stair> stairs) {
    this.grid = grid;
    this.levels = levels;
    this.closed = closed;
    this.walls = walls;
    moves = new Moves(grid.columns());
    level = levels.draw(grid);
    allowed = moves.allowed(grid, closed, level);
    distances = new int[grid.size()];
    unitM = grid.cellM() / (Moves.PER_CELL * Moves.MEAN_STRETCH);
    climbs =
        stairs.stream()
            .filter(stair -> !walls.cut(stair.foot(), stair.top()))
            .map(this::climb)
            .flatMap(Optional::stream)
            .toList();
    for (Climb climb : climbs) {
      ofClimbs.set(climb.foot());
      ofClimbs.set(climb.top());
    }
  }

  private Optional<Climb> climb(Stair stair) {
    int[] foot = openCells(stair.foot()).toArray();
    int[] top = openCells(stair.top()).toArray();
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

  /** Measures the distances from another point, until those to all these points are known. */
  void measureFrom(Point from, List<Point> targets) {
    BitSet wanted = new BitSet(grid.size());
    targets.forEach(target -> openCells(target).forEach(wanted::set));
    Arrays.fill(distances, FAR);
    int longest = climbs.stream().mapToInt(Climb::length).max().orElse(0);
    BucketQueue queue = new BucketQueue(Math.max(longest, 3 * Moves.PER_CELL));
    openCells(from)
        .forEach(
            cell ->
                reach(queue, cell, (int) Math.round(grid.middle(cell).distanceTo(from) / unitM)));
    int left = wanted.cardinality();
    while (left > 0 && !queue.isEmpty()) {
      int cell = queue.pop();
      int distance = queue.distance();
      if (distances[cell] == distance) {
        spread(queue, cell, distance);
        if (wanted.get(cell)) {
          wanted.clear(cell);
          left--;
        }
      }
    }
  }

  private void spread(BucketQueue queue, int cell, int distance) {
    int bits = allowed[cell] & 0xffff;
    while (bits != 0) {
      int move = Integer.numberOfTrailingZeros(bits);
      bits &= bits - 1;
      reach(queue, cell + moves.offset(move), distance + moves.length(move));
    }
    if (!ofClimbs.get(cell)) {
      return;
    }
    for (Climb climb : climbs) {
      if (cell == climb.foot()) {
        reach(queue, climb.top(), distance + climb.length());
      } else if (cell == climb.top()) {
        reach(queue, climb.foot(), distance + climb.length());
      }
    }
  }

  private void reach(BucketQueue queue, int cell, int distance) {
    if (distance < distances[cell]) {
      distances[cell] = distance;
      queue.push(cell, distance);
    }
  }

  /** Metres of walk to one of the points that were asked for, infinite if nobody gets there. */
  double metresTo(Point to) {
    return openCells(to)
        .filter(cell -> distances[cell] != FAR)
        .mapToDouble(cell -> distances[cell] * unitM + grid.middle(cell).distanceTo(to))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * The open cells around a point on its own level and on its own side of every wall; several, so
   * that a point between cells is measured from the one on its way. Where none is at hand, the
   * nearest.
   */
  private IntStream openCells(Point p) {
    return IntStream.of(openCells.computeIfAbsent(p, at -> findOpenCells(at).toArray()));
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
