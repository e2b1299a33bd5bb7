package skidway.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The relaxation over sets that are known one by one instead of all that there could be: much
 * quicker, every part of the problem that branching leaves over has one, and rivals can be charged.
 * Sums stay priced as they were when the sets were told.
 */
final class PoolRelaxation implements Lagrangian {
  private final Ground ground;
  private final List<Column> columns;

  /** Where the charges of rivals begin among the prices. */
  private final int firstRivals;

  /** What each set is charged for, as numbers of prices: rents, and where it is one of rivals. */
  private final int[][] charges;

  /** What each set costs with the toll of the sums, but without worth and charges. */
  private final long[] tolledMs;

  private final List<BitSet> rivals = new ArrayList<>();

  /** The sets of the part that is looked at, by spot. */
  private int[] open = {};

  /** In step with it, at the prices asked last. */
  private long[] value = {};

  private int[] taken = {};
  private int asked;
  private long steps;

  PoolRelaxation(Ground ground, Cliques cliques, Pool pool) {
    this.ground = ground;
    this.columns = pool.columns;
    this.firstRivals = pool.prices.toll(ground.sums());
    this.tolledMs = new long[columns.size()];
    this.charges = new int[columns.size()][];
    for (int c = 0; c < tolledMs.length; c++) {
      Column column = columns.get(c);
      charges[c] = cliques.rents(column.spot, column.moments, pool.prices);
    }
    charge(pool.rivals);
    for (int c = 0; c < tolledMs.length; c++) {
      tolledMs[c] = columns.get(c).valueMs - atMs(c, pool.prices);
    }
  }

  /** Charges for more rivals from now on; prices must have grown by as many. */
  void charge(List<BitSet> more) {
    for (BitSet members : more) {
      int charge = firstRivals + rivals.size();
      members.stream().forEach(c -> charges[c] = with(charges[c], charge));
      rivals.add(members);
    }
  }

  private static int[] with(int[] numbers, int one) {
    int[] more = Arrays.copyOf(numbers, numbers.length + 1);
    more[numbers.length] = one;
    return more;
  }

  /** All rivals that are charged, by numbers of the sets. */
  List<BitSet> rivals() {
    return rivals;
  }

  /** Looks at some of the sets only from now on. */
  void restrict(int[] sets) {
    open = sets;
    value = new long[sets.length];
    taken = new int[sets.length];
    asked = 0;
  }

  /** How often each set was taken since. */
  int[] taken() {
    return taken;
  }

  /** Rivals that were taken more than once in the mean since; at the prices asked last. */
  List<BitSet> takenTooOften(Clashes clashes, int most) {
    double[] shares = new double[open.length];
    for (int i = 0; i < open.length; i++) {
      shares[i] = (double) taken[i] / Math.max(1, asked);
    }
    List<Column> sets = IntStream.of(open).mapToObj(columns::get).toList();
    return new RivalSearch(sets, clashes, shares, value)
        .find(most).stream().map(this::numbers).toList();
  }

  /** Places among the open sets as numbers of all sets. */
  private BitSet numbers(BitSet places) {
    BitSet numbers = new BitSet(columns.size());
    places.stream().forEach(i -> numbers.set(open[i]));
    return numbers;
  }

  /** How many sets were looked at so far. */
  long steps() {
    return steps;
  }

  /** The worth that a set brings in, negative, and what it is charged. */
  private long atMs(int c, Prices prices) {
    long sum = 0;
    for (int b : columns.get(c).set) {
      sum -= prices.ms[b];
    }
    for (int charge : charges[c]) {
      sum += prices.ms[charge];
    }
    return sum;
  }

  @Override
  public long valueMs(Prices prices, double[] off) {
    Arrays.fill(off, 0, ground.bundles(), 1);
    Arrays.fill(off, ground.bundles(), off.length, -1);
    Arrays.fill(off, prices.toll(0), firstRivals, 0);
    long sum = prices.beforeSpotsMs(0);
    steps += open.length;
    asked++;
    for (int i = 0; i < open.length; ) {
      int spot = columns.get(open[i]).spot;
      int best = -1;
      long least = 0;
      for (; i < open.length && columns.get(open[i]).spot == spot; i++) {
        value[i] = tolledMs[open[i]] + atMs(open[i], prices);
        if (value[i] < least) {
          least = value[i];
          best = i;
        }
      }
      if (best >= 0) {
        sum += least;
        taken[best]++;
        count(open[best], off);
      }
    }
    return sum;
  }

  private void count(int c, double[] off) {
    for (int b : columns.get(c).set) {
      off[b]--;
    }
    for (int charge : charges[c]) {
      off[charge]++;
    }
  }

  /** The sets of this part that a plan below some cost can have, at some prices. */
  int[] below(long costMs, Prices prices) {
    long sum = valueMs(prices, new double[prices.ms.length]);
    long[] excess = excess();
    return IntStream.range(0, open.length)
        .filter(i -> sum + excess[i] < costMs)
        .map(i -> open[i])
        .toArray();
  }

  /** The sets of this part at the prices asked last, in their order. */
  List<Column> priced() {
    long[] excess = excess();
    return IntStream.range(0, open.length)
        .mapToObj(i -> columns.get(open[i]).priced(value[i], value[i] - excess[i]))
        .toList();
  }

  /** By how much each set is above what its spot gains, at the prices asked last. */
  private long[] excess() {
    long[] excess = new long[open.length];
    for (int i = 0; i < open.length; ) {
      int from = i;
      int spot = columns.get(open[i]).spot;
      long gain = 0;
      for (; i < open.length && columns.get(open[i]).spot == spot; i++) {
        gain = Math.min(gain, value[i]);
      }
      for (int j = from; j < i; j++) {
        excess[j] = value[j] - gain;
      }
    }
    return excess;
  }
}
