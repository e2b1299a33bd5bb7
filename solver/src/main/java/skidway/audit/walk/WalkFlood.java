package skidway.audit.walk;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Spreads from one place over the cells by their distance, nearest first (Dijkstra). */
final class WalkFlood {
  private static final int FAR = Integer.MAX_VALUE;

  /** How many bits of {@link #known} tell a move. */
  private static final int MOVE_BITS = 5;

  private static final int MOVE = (1 << MOVE_BITS) - 1;

  private final Moves moves;
  private final int[] allowed;
  private final List<Climb> climbs;
  private final BitSet ofClimbs = new BitSet();

  /**
   * Of each cell the nearest way known: its length and, in the last bits, the move it ends with.
   * Together, because fetching a cell from memory takes longer than all that is reckoned with it.
   */
  private final int[] known;

  private final BucketQueue queue;

  /**
   * @param allowed each cell's moves as {@link Moves#allowed} tells them; only read
   */
  WalkFlood(Moves moves, int[] allowed, List<Climb> climbs) {
    this.moves = moves;
    this.allowed = allowed;
    this.climbs = climbs;
    known = new int[allowed.length];
    Arrays.fill(known, FAR);
    int shortest = climbs.stream().mapToInt(Climb::length).min().orElse(Moves.PER_CELL);
    int longest = climbs.stream().mapToInt(Climb::length).max().orElse(0);
    queue =
        new BucketQueue(Math.min(shortest, Moves.PER_CELL), Math.max(longest, 3 * Moves.PER_CELL));
    for (Climb climb : climbs) {
      ofClimbs.set(climb.foot());
      ofClimbs.set(climb.top());
    }
  }

  /** A cell to begin at, with what it lies off the place already; before it spreads. */
  void begin(int cell, int distance) {
    reach(cell, distance, Moves.NONE);
  }

  /** Goes on until the nearest way to every goal is known. */
  void spread(Goals goals) {
    while (!queue.isEmpty()) {
      int cell = queue.pop();
      if (goals.settledBy(queue.leastDistance())) {
        return;
      }
      int way = known[cell];
      int distance = way >> MOVE_BITS;
      boolean leftBefore = queue.bucketOf(distance) < queue.bucket();
      if (!leftBefore) {
        leave(cell, distance, way & MOVE);
        goals.reached(cell, distance);
      }
    }
  }

  private void leave(int cell, int distance, int reachedBy) {
    int bits = moves.worthMaking(allowed[cell], reachedBy);
    while (bits != 0) {
      int move = Integer.numberOfTrailingZeros(bits);
      bits &= bits - 1;
      reach(cell + moves.offset(move), distance + moves.length(move), move);
    }
    if (ofClimbs.get(cell)) {
      climb(cell, distance);
    }
  }

  private void climb(int cell, int distance) {
    for (Climb climb : climbs) {
      if (cell == climb.foot()) {
        reach(climb.top(), distance + climb.length(), Moves.NONE);
      } else if (cell == climb.top()) {
        reach(climb.foot(), distance + climb.length(), Moves.NONE);
      }
    }
  }

  private void reach(int cell, int distance, int move) {
    int way = distance << MOVE_BITS | move;
    int before = known[cell];
    if (way < before) {
      known[cell] = way;
      int bucket = queue.bucketOf(distance);
      if (bucket < queue.bucketOf(before >> MOVE_BITS)) {
        queue.push(cell, bucket);
      }
    }
  }
}
