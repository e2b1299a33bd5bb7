package skidway.bound;

import java.util.Arrays;

/**
 * The bundles that a set on a spot can be made of, the most worth for its room first; those that
 * only cost come last, the cheapest first. Each is counted at its price and what it costs at least
 * for lying on another of them. Of a set all pay that but the lowest.
 */
final class Wanted {
  /** Caps tried on what bundles are counted at for lying on another, beside none counted at all. */
  private static final int CAPS = 4;

  private final Ground ground;
  private final int[] bundle;
  private final long[] ms;
  private final double[] takes;

  /** What each costs at least for lying on another of them. */
  private final long[] fullMs;

  private final long[] growing;

  /** As much of it as is counted. */
  private final long[] onTopMs;

  private final double[] sortKey;
  private int spot;
  private double room;
  private int count;
  private double leastTakes;
  private long mostOnTopMs;

  Wanted(Ground ground) {
    this.ground = ground;
    int n = ground.bundles();
    bundle = new int[n];
    ms = new long[n];
    takes = new double[n];
    onTopMs = new long[n];
    fullMs = new long[n];
    growing = new long[n];
    sortKey = new double[n];
  }

  /** Begins anew. */
  void forSpot(int spot) {
    this.spot = spot;
    room = ground.room(spot);
    count = 0;
    leastTakes = Double.POSITIVE_INFINITY;
    mostOnTopMs = 0;
  }

  /** Wants a bundle too. */
  void add(int wanted, long itsMs) {
    bundle[count] = wanted;
    ms[count] = itsMs;
    takes[count] = ground.takes(wanted, spot);
    leastTakes = Math.min(leastTakes, takes[count]);
    count++;
  }

  /**
   * When all are there. Since the lowest of a set does not pay, a bundle that would pay much makes
   * all sets seem cheaper by that ({@link #lessMs}); so no more than a cap is counted, the one with
   * which the cheapest set seems dearest.
   */
  void sort() {
    for (int i = 0; i < count; i++) {
      fullMs[i] = leastOnTopMs(i);
    }
    System.arraycopy(fullMs, 0, growing, 0, count);
    Arrays.sort(growing, 0, count);
    long bestMs = Long.MIN_VALUE;
    long best = 0;
    for (int part = 0; part <= CAPS; part++) {
      long most = part == 0 || count == 0 ? 0 : growing[(count - 1) * part / CAPS];
      if (part == 0 || most > mostOnTopMs) {
        sort(most);
        if (fill(0, 0) - most > bestMs) {
          bestMs = fill(0, 0) - most;
          best = most;
        }
      }
    }
    if (best < mostOnTopMs) {
      sort(best);
    }
  }

  private void sort(long most) {
    mostOnTopMs = most;
    for (int i = 0; i < count; i++) {
      insert(i, bundle[i], ms[i], takes[i], fullMs[i]);
    }
  }

  private long leastOnTopMs(int i) {
    long least = count == 1 ? 0 : Long.MAX_VALUE;
    for (int j = 0; j < count && least > 0; j++) {
      long onTop = j == i ? Ground.REFUSED : ground.onTopMs(bundle[j], bundle[i], spot);
      least = onTop == Ground.REFUSED ? least : Math.min(least, onTop);
    }
    // One that lies on none of them is the lowest wherever it lies.
    return least == Long.MAX_VALUE ? 0 : least;
  }

  private void insert(int to, int wanted, long itsMs, double itTakes, long itsFullMs) {
    long itsOnTopMs = Math.min(itsFullMs, mostOnTopMs);
    long atLeastMs = itsMs + itsOnTopMs;
    double key =
        atLeastMs < 0 && room < Double.POSITIVE_INFINITY
            ? atLeastMs / Math.max(itTakes, 1e-6)
            : atLeastMs;
    int at = to;
    while (at > 0 && sortKey[at - 1] > key) {
      bundle[at] = bundle[at - 1];
      ms[at] = ms[at - 1];
      takes[at] = takes[at - 1];
      onTopMs[at] = onTopMs[at - 1];
      fullMs[at] = fullMs[at - 1];
      sortKey[at] = sortKey[at - 1];
      at--;
    }
    bundle[at] = wanted;
    ms[at] = itsMs;
    takes[at] = itTakes;
    onTopMs[at] = itsOnTopMs;
    fullMs[at] = itsFullMs;
    sortKey[at] = key;
  }

  int count() {
    return count;
  }

  int bundle(int i) {
    return bundle[i];
  }

  /** What the set costs or gains more for it, beside what all bundles cost together. */
  long ms(int i) {
    return ms[i];
  }

  /** What it costs at least for lying on another. */
  long onTopMs(int i) {
    return onTopMs[i];
  }

  /** By how much a set may be cheaper whose lowest bundle is of those that join. */
  long lessMs(long leastOnTopMs) {
    return Math.min(0, leastOnTopMs - mostOnTopMs);
  }

  boolean fits(int i, double used) {
    return used + takes[i] <= room + 1e-6;
  }

  double with(int i, double used) {
    return used + takes[i];
  }

  boolean isFull(double used) {
    return used + leastTakes > room + 1e-6;
  }

  /** No selection of them from one on that fits what room is left adds less; one at least. */
  long least(int from, double used) {
    return ms[from] + onTopMs[from] < 0 ? fill(from, used) : ms[from] + onTopMs[from];
  }

  /** The same if it may be none. */
  long fill(int from, double used) {
    long sum = 0;
    double rest = room - used + 1e-6;
    for (int i = from; i < count && ms[i] + onTopMs[i] < 0; i++) {
      long atLeastMs = ms[i] + onTopMs[i];
      if (takes[i] > rest) {
        if (rest <= 0) {
          return sum;
        }
        return sum + (long) Math.floor(atLeastMs * (rest / takes[i])) - 1;
      }
      rest -= takes[i];
      sum += atLeastMs;
    }
    return sum;
  }
}
