package skidway.audit.walk;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import skidway.site.Point;

/** The walking distances from one point to every cell while certain walls stand. */
final class WalkField {
  /** How far from a place an open cell may lie to stand for it. */
  private static final double NEAR_M = 0.5;

  private static final int FAR = Integer.MAX_VALUE;

  private final WalkGrid grid;
  private final Levels levels;
  private final Moves moves;
  private final byte[] closed;
  private final byte[] level;
  private final short[] allowed;
  private final int[] distances;
  private final List<Climb> climbs;
  private final double unitM;
  private double startM;

  /** Steps between two cells, and the walk they count for. */
  private record Climb(int foot, int top, int length) {}

  WalkField(WalkGrid grid, Levels levels, byte[] closed, List<Stair> stairs) {
    this.grid = grid;
    this.levels = levels;
    this.closed = closed;
    moves = new Moves(grid.columns());
    level = levels.draw(grid);
    allowed = moves.allowed(grid, closed, level);
    distances = new int[grid.size()];
    unitM = grid.cellM() / Moves.PER_CELL;
    climbs = stairs.stream().map(this::climb).flatMap(Optional::stream).toList();
  }

  private Optional<Climb> climb(Stair stair) {
    Optional<Integer> foot = openCell(stair.foot());
    Optional<Integer> top = openCell(stair.top());
    return foot.flatMap(
        f -> top.map(t -> new Climb(f, t, (int) Math.round(stair.walkM() / unitM))));
  }

  /** Measures the distances from another point. */
  void measureFrom(Point from) {
    Arrays.fill(distances, FAR);
    int longest = climbs.stream().mapToInt(Climb::length).max().orElse(0);
    BucketQueue queue = new BucketQueue(Math.max(longest, 3 * Moves.PER_CELL));
    openCell(from).ifPresent(cell -> reach(queue, cell, 0));
    startM = openCell(from).map(cell -> grid.middle(cell).distanceTo(from)).orElse(0.0);
    while (!queue.isEmpty()) {
      int cell = queue.pop();
      int distance = queue.distance();
      if (distances[cell] == distance) {
        spread(queue, cell, distance);
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

  /** Metres of walk to a point, infinite if nobody gets there. */
  double metresTo(Point to) {
    return openCell(to)
        .filter(cell -> distances[cell] != FAR)
        .map(cell -> startM + distances[cell] * unitM + grid.middle(cell).distanceTo(to))
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The nearest open cell on the point's own level. */
  private Optional<Integer> openCell(Point p) {
    byte own = levels.at(p);
    return grid.near(p, NEAR_M, near -> true).stream()
        .filter(cell -> closed[cell] == 0 && level[cell] == own)
        .boxed()
        .min(
            Comparator.comparingDouble((Integer cell) -> grid.middle(cell).distanceTo(p))
                .thenComparing(Comparator.naturalOrder()));
  }
}
