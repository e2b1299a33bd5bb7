package skidway.bound;

import java.util.Arrays;
import java.util.List;

/**
 * The relaxation over sets that are known one by one instead of all that there could be: much
 * quicker, and every part of the problem that branching leaves over has one. Sums stay priced as
 * they were when the sets were told.
 */
final class PoolRelaxation implements Lagrangian {
  private final Ground ground;
  private final Cliques cliques;
  private final List<Column> columns;

  /** What each set costs with the toll of the sums, but without worth and rent. */
  private final long[] tolledMs;

  /** The sets of the part that is looked at, by spot. */
  private int[] open = {};

  /** In step with it, at the prices asked last. */
  private long[] value = {};

  private int[] taken = {};
  private long steps;

  PoolRelaxation(Ground ground, Cliques cliques, Pool pool, Prices prices) {
    this.ground = ground;
    this.cliques = cliques;
    this.columns = pool.columns;
    this.tolledMs = new long[columns.size()];
    for (int c = 0; c < tolledMs.length; c++) {
      Column column = columns.get(c);
      tolledMs[c] = column.valueMs - atMs(column, prices);
    }
  }

  /** Looks at some of the sets only from now on. */
  void restrict(int[] sets) {
    open = sets;
    value = new long[sets.length];
    taken = new int[sets.length];
  }

  /** How often each set was taken since. */
  int[] taken() {
    return taken;
  }

  @Override
  public long steps() {
    return steps;
  }

  /** The worth that a set brings in, negative, and the rent that it pays. */
  private long atMs(Column column, Prices prices) {
    long sum = 0;
    for (int b : column.set) {
      sum -= prices.ms[b];
    }
    for (int g : cliques.ofSpot(column.spot)) {
      for (long left = column.moments; left != 0; left &= left - 1) {
        sum += prices.ms[prices.rent(g, Long.numberOfTrailingZeros(left))];
      }
    }
    return sum;
  }

  @Override
  public long valueMs(Prices prices, double[] off) {
    Arrays.fill(off, 0, ground.bundles(), 1);
    Arrays.fill(off, ground.bundles(), prices.toll(0), -1);
    Arrays.fill(off, prices.toll(0), off.length, 0);
    long sum = prices.beforeSpotsMs(0);
    steps += open.length;
    for (int i = 0; i < open.length; ) {
      int spot = columns.get(open[i]).spot;
      int best = -1;
      long least = 0;
      for (; i < open.length && columns.get(open[i]).spot == spot; i++) {
        value[i] = tolledMs[open[i]] + atMs(columns.get(open[i]), prices);
        if (value[i] < least) {
          least = value[i];
          best = i;
        }
      }
      if (best >= 0) {
        sum += least;
        taken[best]++;
        count(columns.get(open[best]), prices, off);
      }
    }
    return sum;
  }

  private void count(Column column, Prices prices, double[] off) {
    for (int b : column.set) {
      off[b]--;
    }
    cliques.countUse(column.spot, column.moments, prices, off);
  }

  /** The sets of this part that a plan below some cost can have, at some prices. */
  int[] below(long costMs, Prices prices) {
    long sum = valueMs(prices, new double[prices.ms.length]);
    int[] kept = new int[open.length];
    int count = 0;
    for (int i = 0; i < open.length; ) {
      int from = i;
      int spot = columns.get(open[i]).spot;
      long gain = 0;
      for (; i < open.length && columns.get(open[i]).spot == spot; i++) {
        gain = Math.min(gain, value[i]);
      }
      for (int j = from; j < i; j++) {
        if (sum - gain + value[j] < costMs) {
          kept[count++] = open[j];
        }
      }
    }
    return Arrays.copyOf(kept, count);
  }
}
