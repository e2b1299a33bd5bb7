package skidway.audit.walk;

import java.util.Arrays;

/**
 * The sixteen ways from a cell to cells near it: straight, diagonal and knight's moves, with the
 * cells each passes. Lengths are whole numbers, {@link #PER_CELL} to a cell, true to 0.3 %; the
 * shortest chain of moves is at most 2.8 % longer than the straight line (at the worst angle).
 */
final class Moves {
  static final int PER_CELL = 29;
  private static final int DIAGONAL = 41;
  private static final int KNIGHT = 65;
  static final int COUNT = 16;

  /** Stands for the move that led to a cell where none has. */
  static final int NONE = COUNT;

  private static final int ALL = (1 << COUNT) - 1;

  /** The bit beyond a cell's moves: all cells up to two away are open, on its own level. */
  private static final int WIDE = 1 << COUNT;

  private static final int ROOM = 2;

  /** How much longer than the straight line moves are in the mean of all angles. */
  static final double MEAN_STRETCH = 1.0135;

  private final int[] offsets = new int[COUNT];
  private final int[] lengths = new int[COUNT];
  private final int[] passedA = new int[COUNT];
  private final int[] passedB = new int[COUNT];

  /** For the move that led to a cell, as bits, those that may go on from it in the open. */
  private final int[] onward = new int[COUNT + 1];

  private final int across;

  Moves(int across) {
    this.across = across;
    int[] east = new int[COUNT];
    int[] south = new int[COUNT];
    int n = 0;
    for (int dy = -2; dy <= 2; dy++) {
      for (int dx = -2; dx <= 2; dx++) {
        int far = Math.max(Math.abs(dx), Math.abs(dy));
        int both = Math.abs(dx) + Math.abs(dy);
        if (far == 1 || both == 3) {
          east[n] = dx;
          south[n] = dy;
          offsets[n] = dy * across + dx;
          lengths[n] = both == 1 ? PER_CELL : both == 2 ? DIAGONAL : KNIGHT;
          // A knight's move passes the cell half way along its long leg and the one diagonal to it;
          // a diagonal move passes both cells beside it; a straight move passes none.
          int signX = Integer.signum(dx);
          int signY = Integer.signum(dy);
          boolean upright = Math.abs(dy) > Math.abs(dx);
          passedA[n] = both == 1 ? 0 : both == 2 ? dx : upright ? signY * across : signX;
          passedB[n] = both == 1 ? 0 : both == 2 ? dy * across : signY * across + signX;
          n++;
        }
      }
    }
    Arrays.setAll(onward, m -> m == NONE ? ALL : onward(m, east, south));
  }

  /** A move goes on by itself or turns to the next direction on either side. */
  private int onward(int move, int[] east, int[] south) {
    int bits = 1 << move;
    for (int next = 0; next < COUNT; next++) {
      // Of two directions next to each other one is a knight's.
      boolean oneKnight = (lengths[move] == KNIGHT) != (lengths[next] == KNIGHT);
      int cross = east[move] * south[next] - south[move] * east[next];
      int dot = east[move] * east[next] + south[move] * south[next];
      bits |= oneKnight && Math.abs(cross) == 1 && dot > 0 ? 1 << next : 0;
    }
    return bits;
  }

  int offset(int move) {
    return offsets[move];
  }

  int length(int move) {
    return lengths[move];
  }

  /**
   * Of the moves that a cell allows, those that a shortest way may go on with, as bits. In the open
   * a shortest way turns no further than to the next direction: after any other turn, moves in two
   * directions next to each other lead to the same cell by a shorter way, through cells no further
   * off than two.
   *
   * @param allowed the cell's, of {@link #allowed}
   * @param reachedBy the move that led to the cell, or {@link #NONE}
   */
  int worthMaking(int allowed, int reachedBy) {
    return (allowed & WIDE) != 0 ? onward[reachedBy] : allowed;
  }

  /**
   * For each cell, as bits, the moves that stay on one level and pass open cells only, and whether
   * all is open around it.
   */
  int[] allowed(WalkGrid grid, byte[] closed, byte[] level) {
    int[] allowed = new int[grid.size()];
    int rim = ROOM * across + ROOM;
    for (int cell = rim; cell < allowed.length - rim; cell++) {
      if (closed[cell] == 0) {
        boolean wide = isWide(closed, level, cell);
        allowed[cell] = wide ? ALL | WIDE : allowed(closed, level, cell);
      }
    }
    return allowed;
  }

  private int allowed(byte[] closed, byte[] level, int cell) {
    int bits = 0;
    for (int m = 0; m < COUNT; m++) {
      boolean open =
          same(closed, level, cell, cell + offsets[m])
              && same(closed, level, cell, cell + passedA[m])
              && same(closed, level, cell, cell + passedB[m]);
      bits |= open ? 1 << m : 0;
    }
    return bits;
  }

  private boolean isWide(byte[] closed, byte[] level, int cell) {
    for (int dy = -ROOM; dy <= ROOM; dy++) {
      for (int dx = -ROOM; dx <= ROOM; dx++) {
        if (!same(closed, level, cell, cell + dy * across + dx)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean same(byte[] closed, byte[] level, int cell, int other) {
    return closed[other] == 0 && level[other] == level[cell];
  }
}
