package skidway.bound;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What a bundle is worth where it is placed, what a group of excluding spots takes for being used
 * at a moment, what using up all of a shared sum costs, and what rivals are charged if there are
 * any; person-milliseconds. Whole numbers, one row of them: whatever they are, the bound that
 * follows from them holds.
 */
final class Prices {
  private static final int[] NOTHING = {};

  private final int bundles;
  private final int moments;
  private final int firstSum;

  /** Worth of the bundles, rent of the groups by moment, toll of the sums, charges of rivals. */
  final long[] ms;

  Prices(int bundles, int groups, int moments, int sums) {
    this.bundles = bundles;
    this.moments = moments;
    this.firstSum = bundles + groups * moments;
    this.ms = new long[firstSum + sums];
  }

  Prices copy() {
    Prices copy =
        new Prices(bundles, (firstSum - bundles) / moments, moments, ms.length - firstSum);
    copy.take(this);
    return copy;
  }

  /** The same prices with so many charges more at their end, for nothing so far. */
  Prices grown(int more) {
    Prices grown =
        new Prices(bundles, (firstSum - bundles) / moments, moments, ms.length - firstSum + more);
    System.arraycopy(ms, 0, grown.ms, 0, ms.length);
    return grown;
  }

  void take(Prices other) {
    System.arraycopy(other.ms, 0, ms, 0, ms.length);
  }

  int rent(int group, int moment) {
    return bundles + group * moments + moment;
  }

  int toll(int sum) {
    return firstSum + sum;
  }

  /** Whether a price must not be negative: all but worth. */
  boolean isCharge(int number) {
    return number >= bundles;
  }

  /**
   * The bound before the spots are asked: all worth, less what may stay without a spot, less all
   * charges.
   *
   * @param mayLeave how many bundles may stay without a spot
   */
  long beforeSpotsMs(int mayLeave) {
    long sum = 0;
    for (int i = 0; i < ms.length; i++) {
      sum += isCharge(i) ? -ms[i] : ms[i];
    }
    for (int b : leftOut(mayLeave)) {
      sum -= ms[b];
    }
    return sum;
  }

  /** The bundles that it pays most to leave out, if so many may be. */
  int[] leftOut(int mayLeave) {
    return mayLeave == 0
        ? NOTHING
        : IntStream.range(0, bundles)
            .filter(b -> ms[b] > 0)
            .boxed()
            .sorted(Comparator.comparingLong((Integer b) -> -ms[b]).thenComparing(b -> b))
            .limit(mayLeave)
            .mapToInt(b -> b)
            .toArray();
  }
}
