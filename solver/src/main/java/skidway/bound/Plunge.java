package skidway.bound;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Makes a plan out of what a bound would rather have: takes the set that it asks for most often,
 * raises the bound of what goes with it, and so on, until few sets are left.
 */
final class Plunge {
  /** Steps upwards for the bound after each set. */
  private static final int CLIMBS = 60;

  private final Pool pool;
  private final PoolRelaxation relaxation;
  private final Clashes clashes;

  Plunge(Pool pool, PoolRelaxation relaxation, Clashes clashes) {
    this.pool = pool;
    this.relaxation = relaxation;
    this.clashes = clashes;
  }

  /**
   * A part with few sets in which a plan below some cost may be; without any if there is none.
   *
   * @param sets of the part to begin with
   */
  int[] run(int[] sets, Prices prices, long belowMs, int few) {
    int[] left = sets;
    Prices from = prices;
    boolean[] chosen = new boolean[pool.columns.size()];
    while (left.length > few) {
      relaxation.restrict(left);
      DualAscent ascent = new DualAscent(relaxation, from);
      ascent.climb(belowMs, CLIMBS);
      if (ascent.bestMs() >= belowMs) {
        return new int[0];
      }
      from = ascent.best();
      int column = mostTaken(left, chosen);
      if (column < 0) {
        return left;
      }
      chosen[column] = true;
      left = with(column, relaxation.below(belowMs, from));
    }
    return left;
  }

  private int mostTaken(int[] sets, boolean[] chosen) {
    int[] taken = relaxation.taken();
    return IntStream.range(0, sets.length)
        .filter(i -> !chosen[sets[i]])
        .reduce((i, j) -> taken[j] > taken[i] ? j : i)
        .stream()
        .map(i -> sets[i])
        .findFirst()
        .orElse(-1);
  }

  private int[] with(int column, int[] sets) {
    Column wanted = pool.columns.get(column);
    return Arrays.stream(sets)
        .filter(c -> c == column || !clashes.clash(wanted, pool.columns.get(c)))
        .toArray();
  }
}
