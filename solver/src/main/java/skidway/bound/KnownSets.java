package skidway.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The relaxation over the sets of bundles that have come up so far. It answers a thousand times
 * quicker than the one over all sets there are; since some are missing, its value may be above the
 * cost of a plan and proves nothing.
 */
final class KnownSets implements Lagrangian {
  /** So many known sets are looked at in the time that it takes to find one. */
  private static final int FOR_ONE = 50;

  private static final int[] NO_TOLLS = {};
  private static final double[] NO_SHARES = {};

  /** A set on a spot, and by numbers of prices what it takes. */
  private static final class Known {
    final Column column;
    final int[] rents;
    final int[] tolls;

    /** In step with the tolls. */
    final double[] shares;

    Known(Column column, int[] rents, int[] tolls, double[] shares) {
      this.column = column;
      this.rents = rents;
      this.tolls = tolls;
      this.shares = shares;
    }

    long valueMs(long[] prices) {
      long sum = column.costMs;
      for (int b : column.set) {
        sum -= prices[b];
      }
      for (int rent : rents) {
        sum += prices[rent];
      }
      for (int i = 0; i < tolls.length; i++) {
        sum += (long) (shares[i] * prices[tolls[i]]);
      }
      return sum;
    }

    void count(double[] off) {
      for (int b : column.set) {
        off[b]--;
      }
      for (int rent : rents) {
        off[rent]++;
      }
      for (int i = 0; i < tolls.length; i++) {
        off[tolls[i]] += shares[i];
      }
    }
  }

  private final Ground ground;
  private final Cliques cliques;
  private final int mayLeave;
  private final List<List<Known>> ofSpot = new ArrayList<>();

  /** What each spot gains in the last answer: never positive. */
  private final long[] gainMs;

  private long looked;

  KnownSets(Ground ground, Cliques cliques, int mayLeave) {
    this.ground = ground;
    this.cliques = cliques;
    this.mayLeave = mayLeave;
    this.gainMs = new long[ground.spots()];
    for (int s = 0; s < gainMs.length; s++) {
      ofSpot.add(new ArrayList<>());
    }
  }

  /**
   * Knows a set from now on.
   *
   * @param set growing
   * @param numbers any prices, for their numbers
   * @return whether it was unknown
   */
  boolean add(int spot, int[] set, Prices numbers) {
    List<Known> there = ofSpot.get(spot);
    if (there.stream().anyMatch(known -> Arrays.equals(known.column.set, set))) {
      return false;
    }
    Column column = new Column(ground, spot, set, 0, 0);
    int[] rents = cliques.rents(spot, column.moments, numbers);
    there.add(new Known(column, rents, tolls(spot, set, numbers), shares(spot, set)));
    return true;
  }

  private int[] tolls(int spot, int[] set, Prices numbers) {
    return ground.sums() == 0
        ? NO_TOLLS
        : Arrays.stream(load(spot, set).sums).map(numbers::toll).toArray();
  }

  private double[] shares(int spot, int[] set) {
    double massKg = Arrays.stream(set).mapToDouble(ground::massKg).sum();
    return ground.sums() == 0
        ? NO_SHARES
        : Arrays.stream(load(spot, set).perKg).map(perKg -> perKg * massKg).toArray();
  }

  private Ground.Load load(int spot, int[] set) {
    return ground.load(spot, ground.lowest(set, set.length, spot));
  }

  /** Those that a plan can have which costs so much more than the bound that was answered. */
  List<Column> columns(Answer answer, long belowMs) {
    List<Column> columns = new ArrayList<>();
    for (int s = 0; s < gainMs.length; s++) {
      for (Known known : ofSpot.get(s)) {
        long its = known.valueMs(answer.prices.ms);
        if (its - answer.gainMs[s] < belowMs) {
          columns.add(known.column.priced(its, answer.gainMs[s]));
        }
      }
    }
    return columns;
  }

  /** What a spot gains in the last answer: never positive. */
  long gainMs(int spot) {
    return gainMs[spot];
  }

  /** How many sets were looked at so far, known ones at their share. */
  long steps() {
    return looked / FOR_ONE;
  }

  @Override
  public long valueMs(Prices prices, double[] off) {
    Arrays.fill(off, 0, ground.bundles(), 1);
    Arrays.fill(off, ground.bundles(), off.length, -1);
    for (int b : prices.leftOut(mayLeave)) {
      off[b]--;
    }
    long value = prices.beforeSpotsMs(mayLeave);
    for (int s = 0; s < gainMs.length; s++) {
      gainMs[s] = 0;
      Known best = null;
      for (Known known : ofSpot.get(s)) {
        long its = known.valueMs(prices.ms);
        if (its < gainMs[s]) {
          gainMs[s] = its;
          best = known;
        }
      }
      looked += ofSpot.get(s).size();
      value += gainMs[s];
      if (best != null) {
        best.count(off);
      }
    }
    return value;
  }
}
