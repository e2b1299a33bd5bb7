package skidway.staging;

import java.util.Random;

/**
 * Draws changes to a staging that a foreman might try: put a bundle elsewhere, swap two, move or
 * swap whole stacks or their upper parts, push one out to a third spot, clear what stands in a
 * spot's way.
 *
 * <p>Target spots come from the bundle's list of cheapest spots, its head much more often than its
 * tail.
 */
final class Proposal {
  private final Occupancy live;
  private final Board board;
  private final Random random;
  private final Change change = new Change();

  Proposal(Occupancy live, Random random) {
    this.live = live;
    this.board = live.board;
    this.random = random;
  }

  /** The next change; it is overwritten by the one after. */
  Change draw() {
    change.clear();
    int bundle = drawBundle();
    int kind = live.unplaced() == board.bundleCount() ? 0 : random.nextInt(100);
    if (kind < 40 || (live.spotOf(bundle) == Occupancy.NOWHERE && kind < 60)) {
      change.send(bundle, nearSpot(bundle));
    } else if (kind < 50) {
      swap(bundle);
    } else if (kind < 55) {
      swapWhatComesLater(bundle);
    } else if (kind < 68) {
      moveStack(bundle);
    } else if (kind < 75) {
      swapStacks(bundle);
    } else if (kind < 87) {
      pushOut(bundle);
    } else {
      clearTheWay(bundle);
    }
    if (change.size() == 0) {
      change.send(bundle, nearSpot(bundle));
    }
    return change;
  }

  /** Half of the draws go to bundles without a spot while there are any. */
  private int drawBundle() {
    int n = board.bundleCount();
    int bundle = random.nextInt(n);
    if (live.unplaced() > 0 && random.nextBoolean()) {
      for (int i = 0; i < n; i++) {
        int candidate = (bundle + i) % n;
        if (live.spotOf(candidate) == Occupancy.NOWHERE && board.near[candidate].length > 0) {
          return candidate;
        }
      }
    }
    return bundle;
  }

  private int nearSpot(int bundle) {
    int[] near = board.near[bundle];
    if (near.length == 0) {
      return Occupancy.NOWHERE;
    }
    double r = random.nextDouble();
    return near[(int) (near.length * r * r * r)];
  }

  private int nearUsedSpot(int bundle) {
    for (int i = 0; i < 20; i++) {
      int spot = nearSpot(bundle);
      if (spot == Occupancy.NOWHERE || live.count(spot) > 0) {
        return spot;
      }
    }
    return Occupancy.NOWHERE;
  }

  private int anyMember(int spot) {
    return live.member(spot, random.nextInt(live.count(spot)));
  }

  private void swap(int bundle) {
    int spot = nearUsedSpot(bundle);
    if (spot != Occupancy.NOWHERE && spot != live.spotOf(bundle)) {
      change.send(anyMember(spot), live.spotOf(bundle));
      change.send(bundle, spot);
    }
  }

  /** Two stacks trade what comes from this bundle on: their lower parts, roughly, stay. */
  private void swapWhatComesLater(int bundle) {
    int from = live.spotOf(bundle);
    int to = nearUsedSpot(bundle);
    if (from != Occupancy.NOWHERE && to != Occupancy.NOWHERE && from != to) {
      sendFrom(bundle, from, to);
      sendFrom(bundle, to, from);
    }
  }

  private void sendFrom(int first, int from, int to) {
    for (int i = 0; i < live.count(from); i++) {
      if (live.member(from, i) >= first) {
        change.send(live.member(from, i), to);
      }
    }
  }

  private void moveStack(int bundle) {
    int from = live.spotOf(bundle);
    int to = nearSpot(bundle);
    if (from != Occupancy.NOWHERE && to != Occupancy.NOWHERE && live.count(to) == 0) {
      sendStack(from, to);
    }
  }

  private void swapStacks(int bundle) {
    int from = live.spotOf(bundle);
    int to = nearUsedSpot(bundle);
    if (from != Occupancy.NOWHERE && to != Occupancy.NOWHERE && from != to) {
      sendStack(from, to);
      sendStack(to, from);
    }
  }

  private void pushOut(int bundle) {
    int spot = nearUsedSpot(bundle);
    if (spot != Occupancy.NOWHERE && spot != live.spotOf(bundle)) {
      int pushed = anyMember(spot);
      change.send(bundle, spot);
      change.send(pushed, nearSpot(pushed));
    }
  }

  /**
   * Takes a spot that others stand in the way of and sends those elsewhere, together or one by one.
   */
  private void clearTheWay(int bundle) {
    int spot = nearSpot(bundle);
    if (spot == Occupancy.NOWHERE || live.free(spot)) {
      return;
    }
    change.send(bundle, spot);
    boolean together = random.nextBoolean();
    for (int other : board.excludes[spot]) {
      if (live.count(other) == 0) {
        continue;
      }
      if (together) {
        sendStack(other, nearSpot(anyMember(other)));
      } else {
        for (int i = 0; i < live.count(other); i++) {
          int member = live.member(other, i);
          change.send(member, nearSpot(member));
        }
      }
    }
  }

  private void sendStack(int from, int to) {
    for (int i = 0; i < live.count(from); i++) {
      change.send(live.member(from, i), to);
    }
  }
}
