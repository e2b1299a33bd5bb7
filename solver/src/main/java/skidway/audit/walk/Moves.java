package skidway.audit.walk;

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

  /** How much longer than the straight line moves are in the mean of all angles. */
  static final double MEAN_STRETCH = 1.0135;

  private final int[] offsets = new int[COUNT];
  private final int[] lengths = new int[COUNT];
  private final int[] passedA = new int[COUNT];
  private final int[] passedB = new int[COUNT];

  Moves(int across) {
    int n = 0;
    for (int dy = -2; dy <= 2; dy++) {
      for (int dx = -2; dx <= 2; dx++) {
        int far = Math.max(Math.abs(dx), Math.abs(dy));
        int both = Math.abs(dx) + Math.abs(dy);
        if (far == 1 || both == 3) {
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
  }

  int offset(int move) {
    return offsets[move];
  }

  int length(int move) {
    return lengths[move];
  }

  /** For each cell, as bits, the moves that stay on one level and pass open cells only. */
  short[] allowed(WalkGrid grid, byte[] closed, byte[] level) {
    short[] allowed = new short[grid.size()];
    int rim = 2 * grid.columns() + 2;
    for (int cell = rim; cell < allowed.length - rim; cell++) {
      if (closed[cell] == 0) {
        int bits = 0;
        for (int m = 0; m < COUNT; m++) {
          boolean open =
              same(closed, level, cell, cell + offsets[m])
                  && same(closed, level, cell, cell + passedA[m])
                  && same(closed, level, cell, cell + passedB[m]);
          bits |= open ? 1 << m : 0;
        }
        allowed[cell] = (short) bits;
      }
    }
    return allowed;
  }

  private static boolean same(byte[] closed, byte[] level, int cell, int other) {
    return closed[other] == 0 && level[other] == level[cell];
  }
}
