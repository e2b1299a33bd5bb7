package skidway.staging;

import java.util.Arrays;
import skidway.bound.Ground;
import skidway.limits.PickHeight;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;

/**
 * What two bundles cost at least for lying in one stack, whatever else is in it and wherever it is,
 * if neither lay there from the start. Rehandles and set-downs of a pair grow with what joins it,
 * only picking may get easier; so they are counted without any help from height.
 */
final class Companions {
  private static final long UNKNOWN = -2;

  private final Board board;
  private final long[] leastPickMs;
  private final long[][] leastMs;

  Companions(Board board) {
    this.board = board;
    int n = board.bundleCount();
    leastPickMs = new long[n];
    leastMs = new long[n][];
    for (int b = 0; b < n; b++) {
      leastPickMs[b] = leastPick(b);
      leastMs[b] = new long[b];
      Arrays.fill(leastMs[b], UNKNOWN);
    }
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

  /** Person-milliseconds beyond picking, or {@link Ground#REFUSED} if neither may be beneath. */
  long leastMs(int a, int b) {
    int high = Math.max(a, b);
    int low = Math.min(a, b);
    if (leastMs[high][low] == UNKNOWN) {
      leastMs[high][low] = together(low, high);
    }
    return leastMs[high][low];
  }

  private long together(int low, int high) {
    if ((board.there[low] & board.there[high]) == 0) {
      return 0;
    }
    long lowBeneath = onTop(low, high);
    long highBeneath = onTop(high, low);
    if (lowBeneath == Ground.REFUSED || highBeneath == Ground.REFUSED) {
      return Math.max(lowBeneath, highBeneath);
    }
    return Math.min(lowBeneath, highBeneath);
  }

  /** Rehandles and set-downs of a bundle for one beneath it, or REFUSED. */
  private long onTop(int beneath, int upper) {
    int[] pair = {Math.min(beneath, upper), Math.max(beneath, upper)};
    Pile pile = new Pile(board, pair, 2, Occupancy.NOWHERE);
    return new Stacking(board, pile, Waits.FREE, Stacking.Heed.SUPPORT)
        .onTopMs(pair[0] == upper ? 0 : 1);
  }
}
