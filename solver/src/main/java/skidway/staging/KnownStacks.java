package skidway.staging;

import org.jspecify.annotations.Nullable;

/**
 * Remembers the best orders of stacks. Two stacks may want the same place; then the older is
 * forgotten, so that what is remembered takes no more than so much room.
 */
final class KnownStacks {
  /** More bundles than a key has room for are never tried on one another. */
  static final int MOST_BUNDLES = 12;

  /** Places, a power of two; only memory and speed depend on how many. */
  private static final int FEWEST_PLACES = 1 << 10;

  private static final int MOST_PLACES = 1 << 19;

  /** Odd, its bits without a pattern: the golden section of 2^64. */
  private static final long STIR = 0x9E3779B97F4A7C15L;

  private record Known(
      long first, long second, long third, int footing, int home, StackCost cost) {}

  private @Nullable Known[] places = new Known[FEWEST_PLACES];
  private int taken;

  // What was asked for last, a key in four parts.
  private long first;
  private long second;
  private long third;
  private int footing;
  private int home;

  /**
   * The best order of a set of bundles, if it is remembered.
   *
   * @param set growing; the first {@code k} count, at most {@link #MOST_BUNDLES}
   * @param home the spot where some of the bundles lay from the start, if it is this one
   */
  @Nullable StackCost find(int[] set, int k, int footing, int home) {
    this.first = packed(set, 0, k);
    this.second = packed(set, 4, k);
    this.third = packed(set, 8, k);
    this.footing = footing;
    this.home = home;
    Known known = places[place(first, second, third, footing, home)];
    return known != null && isAskedFor(known) ? known.cost : null;
  }

  /** Remembers what was asked for last. */
  void keep(StackCost cost) {
    if (taken > places.length / 2 && places.length < MOST_PLACES) {
      spread();
    }
    put(new Known(first, second, third, footing, home, cost));
  }

  private void put(Known known) {
    int place = place(known.first, known.second, known.third, known.footing, known.home);
    taken += places[place] == null ? 1 : 0;
    places[place] = known;
  }

  /** Over twice as many places. */
  private void spread() {
    @Nullable Known[] before = places;
    places = new Known[2 * before.length];
    taken = 0;
    for (Known known : before) {
      if (known != null) {
        put(known);
      }
    }
  }

  private boolean isAskedFor(Known known) {
    return known.first == first
        && known.second == second
        && known.third == third
        && known.footing == footing
        && known.home == home;
  }

  /** Bundle numbers are small and alike, so that they must be stirred well. */
  private int place(long first, long second, long third, int footing, int home) {
    long stirred = (((first * STIR) ^ second) * STIR) ^ third;
    stirred ^= stirred >>> 31;
    stirred = (stirred ^ (stirred >>> 32)) * STIR + footing;
    stirred = (stirred ^ (stirred >>> 29)) * STIR + home;
    return (int) (stirred ^ (stirred >>> 32)) & (places.length - 1);
  }

  /** Bundle numbers are below 65,536, so four of them fill a long. */
  private static long packed(int[] set, int from, int k) {
    long packed = 0;
    for (int i = from; i < Math.min(k, from + 4); i++) {
      packed = packed << 16 | (set[i] + 1);
    }
    return packed;
  }
}
