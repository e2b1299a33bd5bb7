package skidway.staging;

import java.util.Arrays;

/**
 * Collects which bundles go where, and says whether a plan could stand it. The first word about a
 * bundle counts. One change is used again and again, because a search draws millions of them.
 */
final class Change {
  private int[] bundles = new int[8];
  private int[] targets = new int[8];
  private int[] before = new int[8];
  private int size;

  void clear() {
    size = 0;
  }

  int size() {
    return size;
  }

  void send(int bundle, int spot) {
    for (int i = 0; i < size; i++) {
      if (bundles[i] == bundle) {
        return;
      }
    }
    if (size == bundles.length) {
      bundles = Arrays.copyOf(bundles, 2 * size);
      targets = Arrays.copyOf(targets, 2 * size);
      before = new int[2 * size];
    }
    bundles[size] = bundle;
    targets[size++] = spot;
  }

  /** Whether any bundle would lie elsewhere than now. */
  boolean changes(Occupancy live) {
    for (int i = 0; i < size; i++) {
      if (live.spotOf(bundles[i]) != targets[i]) {
        return true;
      }
    }
    return false;
  }

  /** Whether the plan would still be within the rules; the occupancy is left as it was. */
  boolean keepsRules(Occupancy live) {
    if (isHopeless(live)) {
      return false;
    }
    for (int i = 0; i < size; i++) {
      before[i] = live.spotOf(bundles[i]);
      live.take(bundles[i]);
    }
    for (int i = 0; i < size; i++) {
      live.put(bundles[i], targets[i]);
    }
    boolean legal = live.legal();
    for (int i = 0; i < size; i++) {
      live.take(bundles[i]);
    }
    for (int i = 0; i < size; i++) {
      live.put(bundles[i], before[i]);
    }
    return legal;
  }

  /**
   * Whether a target is refused, stands in the way of a spot that stays used, or would have two
   * bundles that are never in one stack: seen at a glance.
   */
  private boolean isHopeless(Occupancy live) {
    for (int i = 0; i < size; i++) {
      int target = targets[i];
      if (target == Occupancy.NOWHERE) {
        continue;
      }
      if (live.board.placeMs[bundles[i]][target] == Board.REFUSED) {
        return true;
      }
      if (live.board.moments == 1
          && live.count(target) == 0
          && live.excluders(target) > vacatedAround(target, live)) {
        return true;
      }
      if (meetsAStranger(i, live)) {
        return true;
      }
    }
    return false;
  }

  /** Whether one that stays on a target, or is sent there too, never shares a stack with it. */
  private boolean meetsAStranger(int at, Occupancy live) {
    int target = targets[at];
    for (int i = 0; i < live.count(target); i++) {
      int other = live.member(target, i);
      if (other != bundles[at]
          && live.neverTogether(bundles[at], other, target)
          && !isSent(other)) {
        return true;
      }
    }
    for (int i = 0; i < at; i++) {
      if (targets[i] == target && live.neverTogether(bundles[at], bundles[i], target)) {
        return true;
      }
    }
    return false;
  }

  private boolean isSent(int bundle) {
    for (int i = 0; i < size; i++) {
      if (bundles[i] == bundle) {
        return true;
      }
    }
    return false;
  }

  /** How many used spots that exclude a spot this move leaves empty. */
  private int vacatedAround(int spot, Occupancy live) {
    int vacated = 0;
    for (int i = 0; i < size; i++) {
      int from = live.spotOf(bundles[i]);
      if (from != Occupancy.NOWHERE
          && live.board.exclude(from, spot)
          && isFirstFrom(from, i, live)
          && leaving(from, live) == live.count(from)) {
        vacated++;
      }
    }
    return vacated;
  }

  private boolean isFirstFrom(int from, int at, Occupancy live) {
    for (int i = 0; i < at; i++) {
      if (live.spotOf(bundles[i]) == from) {
        return false;
      }
    }
    return true;
  }

  private int leaving(int from, Occupancy live) {
    int leaving = 0;
    for (int i = 0; i < size; i++) {
      leaving += live.spotOf(bundles[i]) == from ? 1 : 0;
    }
    return leaving;
  }

  Reassign toMove() {
    return new Reassign(Arrays.copyOf(bundles, size), Arrays.copyOf(targets, size));
  }
}
