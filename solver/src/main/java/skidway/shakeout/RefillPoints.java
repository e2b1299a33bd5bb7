package skidway.shakeout;

import java.util.List;
import java.util.stream.IntStream;
import skidway.erection.Placement;

/**
 * Finds where a wave may be brought in: at the beginning, and wherever all pieces laid are of lower
 * courses than all that are not, so that every wall's course is ended.
 */
final class RefillPoints {
  private RefillPoints() {}

  /** Numbers of pieces laid, growing, from 0 to all of them. */
  static int[] of(List<Placement> pieces) {
    int n = pieces.size();
    int[] lowestFrom = new int[n + 1];
    lowestFrom[n] = Integer.MAX_VALUE;
    for (int i = n - 1; i >= 0; i--) {
      lowestFrom[i] = Math.min(lowestFrom[i + 1], course(pieces, i));
    }
    int[] highestBefore = new int[n + 1];
    for (int i = 0; i < n; i++) {
      highestBefore[i + 1] = Math.max(highestBefore[i], course(pieces, i));
    }
    return IntStream.rangeClosed(0, n).filter(i -> highestBefore[i] < lowestFrom[i]).toArray();
  }

  private static int course(List<Placement> pieces, int i) {
    return pieces.get(i).piece().course();
  }
}
