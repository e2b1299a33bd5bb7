package skidway.bound;

import java.util.BitSet;

/** Which sets of bundles on spots cannot both be in a plan. */
final class Clashes {
  private final BitSet[] excludes;

  Clashes(Ground ground) {
    excludes = excludes(ground);
  }

  /** For each spot those that exclude it, a bit each. */
  static BitSet[] excludes(Ground ground) {
    BitSet[] excludes = new BitSet[ground.spots()];
    for (int s = 0; s < excludes.length; s++) {
      excludes[s] = new BitSet(excludes.length);
      for (int other : ground.excludes(s)) {
        excludes[s].set(other);
      }
    }
    return excludes;
  }

  boolean clash(Column a, Column b) {
    if (a.spot == b.spot || (excludes[a.spot].get(b.spot) && (a.moments & b.moments) != 0)) {
      return true;
    }
    for (int bundle : a.set) {
      if (b.holds(bundle)) {
        return true;
      }
    }
    return false;
  }
}
