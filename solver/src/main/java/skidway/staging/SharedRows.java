package skidway.staging;

import java.util.Arrays;
import skidway.bound.Ground;

/**
 * The limits that stacks share, as sums that no plan exceeds: zone totals and reactions as they
 * are, the bending of a joist's span at a few places of it, since the moment at a place adds up
 * where the highest moment does not.
 */
final class SharedRows {
  /** Where in a span bending is summed, shares of its length. */
  private static final double[] PLACES = {0.35, 0.5, 0.65};

  /** Sums are kept in thousandths elsewhere; so much they may be above a limit. */
  private static final double THOUSANDTH = 0.001;

  private static final double ROUNDING = 1e-9;

  private final Board board;

  /** Number of the first sum of each limit. */
  private final int[] first;

  private final int count;
  private final Ground.Load[][] loads;

  SharedRows(Board board) {
    this.board = board;
    first = new int[board.shared.count()];
    int next = 0;
    for (int limit = 0; limit < first.length; limit++) {
      first[limit] = next;
      next += board.shared.isBound(limit) ? PLACES.length : 1;
    }
    count = next;
    loads = new Ground.Load[board.spotCount()][board.bundleCount()];
  }

  int count() {
    return count;
  }

  /** What a stack adds to each sum per kilogram, as a share of what the sum may be. */
  Ground.Load of(int spot, int lowest) {
    int size = board.sizeOf(lowest);
    Ground.Load load = loads[spot][size];
    if (load == null) {
      load = load(board.share(spot, lowest));
      loads[spot][size] = load;
    }
    return load;
  }

  private Ground.Load load(SharedLimits.Share share) {
    int[] sums = new int[share.limits.length * PLACES.length];
    double[] perKg = new double[sums.length];
    int size = 0;
    for (int i = 0; i < share.limits.length; i++) {
      int limit = share.limits[i];
      double most = (board.shared.most(limit) + THOUSANDTH) * (1 + ROUNDING);
      if (board.shared.isBound(limit)) {
        double spanM = board.shared.spanM(limit);
        for (int p = 0; p < PLACES.length; p++) {
          sums[size] = first[limit] + p;
          perKg[size++] = share.momentNmPerKg(limit, spanM, PLACES[p] * spanM) / most;
        }
      } else {
        sums[size] = first[limit];
        perKg[size++] = share.perKg[i] / most;
      }
    }
    return new Ground.Load(Arrays.copyOf(sums, size), Arrays.copyOf(perKg, size));
  }

  /** Whether a stack breaks a shared limit all by itself. */
  boolean isTooMuch(int spot, int lowest, double massKg) {
    SharedLimits.Share share = board.share(spot, lowest);
    for (int i = 0; i < share.limits.length; i++) {
      double most = (board.shared.most(share.limits[i]) + THOUSANDTH) * (1 + ROUNDING);
      if (share.perKg[i] * massKg > most) {
        return true;
      }
    }
    return false;
  }
}
