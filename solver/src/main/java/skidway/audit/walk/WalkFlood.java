package skidway.audit.walk;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Spreads from one place over the cells by their distance, nearest first (Dijkstra). */
final class WalkFlood {
  private static final int FAR = Integer.MAX_VALUE;

  private final Moves moves;
  private final short[] allowed;
  private final List<Climb> climbs;
  private final BitSet ofClimbs = new BitSet();
  private final int[] distances;
  private final BucketQueue queue;

  /**
   * @param allowed each cell's moves as {@link Moves#allowed} tells them; only read
   */
  WalkFlood(Moves moves, short[] allowed, List<Climb> climbs) {
    this.moves = moves;
    this.allowed = allowed;
    this.climbs = climbs;
    distances = new int[allowed.length];
    Arrays.fill(distances, FAR);
    int longest = climbs.stream().mapToInt(Climb::length).max().orElse(0);
    queue = new BucketQueue(Math.max(longest, 3 * Moves.PER_CELL));
    for (Climb climb : climbs) {
      ofClimbs.set(climb.foot());
      ofClimbs.set(climb.top());
    }
  }

  /** A cell to begin at, with what it lies off the place already; before it spreads. */
  void begin(int cell, int distance) {
    reach(cell, distance);
  }

  /** Goes on until the nearest way to every goal is known. */
  void spread(Goals goals) {
    while (!queue.isEmpty()) {
      int cell = queue.pop();
      int distance = queue.distance();
      if (goals.settledBy(distance)) {
        return;
      }
      if (distances[cell] == distance) {
        leave(cell, distance);
        goals.reached(cell, distance);
      }
    }
  }

  private void leave(int cell, int distance) {
    int bits = allowed[cell] & 0xffff;
    while (bits != 0) {
      int move = Integer.numberOfTrailingZeros(bits);
      bits &= bits - 1;
      reach(cell + moves.offset(move), distance + moves.length(move));
    }
    if (ofClimbs.get(cell)) {
      climb(cell, distance);
    }
  }

  private void climb(int cell, int distance) {
    for (Climb climb : climbs) {
      if (cell == climb.foot()) {
        reach(climb.top(), distance + climb.length());
      } else if (cell == climb.top()) {
        reach(climb.foot(), distance + climb.length());
      }
    }
  }

  private void reach(int cell, int distance) {
    if (distance < distances[cell]) {
      distances[cell] = distance;
      queue.push(cell, distance);
    }
  }
}
