package skidway.staging;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import skidway.bound.Ground;
import skidway.limits.PickHeight;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;

/**
 * What a bundle costs at least for lying on another in one stack, whatever else is in it and
 * wherever it is, if neither lay there from the start. Rehandles and set-downs of a pair grow with
 * what joins it, only picking may get easier; so they are counted without any help from height.
 */
final class Companions {
  private static final int UNKNOWN = -2;

  private final Board board;
  private final long[] leastPickMs;

  /** By upper and lower one. */
  private final int[] @Nullable [] onTopMs;

  Companions(Board board) {
    this.board = board;
    int n = board.bundleCount();
    leastPickMs = new long[n];
    onTopMs = new int[n][];
    Arrays.setAll(leastPickMs, this::leastPick);
  }

  /**
   * No more than what picking a bundle's pieces costs at any height. The time lost rises on both
   * sides of the best height of each piece and jumps where a piece is out of reach; so the least of
   * the sum is at one of those heights, or at the lowest. A millisecond a piece makes up for
   * rounding.
   */
  private long leastPick(int b) {
    long least = board.pickMs(b, board.bearerM);
    Bundle bundle = board.bundles.get(b);
    for (PackedPiece packed : bundle.packed()) {
      double aboveM = PickHeight.metres(0, bundle, board.task.layerOnSpot(bundle, packed));
      for (double heightM : new double[] {PickHeight.BEST_M, PickHeight.HIGHEST_M}) {
        double baseM = Math.max(board.bearerM, heightM - aboveM);
        least = Math.min(least, board.pickMs(b, baseM));
      }
    }
    return Math.max(0, least - bundle.packed().size());
  }

  long leastPickMs(int bundle) {
    return leastPickMs[bundle];
  }

  /**
   * Person-milliseconds beyond picking for a bundle with another beneath it, at most some hundred
   * hours of them, or {@link Ground#REFUSED} if it may not lie above that.
   */
  long onTopMs(int beneath, int bundle) {
    int[] row = onTopMs[bundle];
    if (row == null) {
      row = new int[board.bundleCount()];
      Arrays.fill(row, UNKNOWN);
      onTopMs[bundle] = row;
    }
    if (row[beneath] == UNKNOWN) {
      row[beneath] = (int) Math.min(Integer.MAX_VALUE, told(beneath, bundle));
    }
    return row[beneath];
  }

  private long told(int beneath, int bundle) {
    if ((board.there[beneath] & board.there[bundle]) == 0) {
      return 0;
    }
    int[] pair = {Math.min(beneath, bundle), Math.max(beneath, bundle)};
    Pile pile = new Pile(board, pair, 2, Occupancy.NOWHERE);
    return new Stacking(board, pile, Waits.FREE, Stacking.Heed.SUPPORT)
        .onTopMs(pair[0] == bundle ? 0 : 1);
  }
}
