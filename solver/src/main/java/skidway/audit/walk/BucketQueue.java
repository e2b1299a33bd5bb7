package skidway.audit.walk;

import java.util.Arrays;

/**
 * A queue of cells by whole-number distance, for distances that never lie further than a known span
 * ahead of the least one: a ring of buckets, one for each distance.
 */
final class BucketQueue {
  private final int[][] buckets;
  private final int[] sizes;

  /** The ring has a power of two of buckets, so that this finds a distance's without a division. */
  private final int ring;

  private int held;
  private int distance;

  BucketQueue(int span) {
    int slots = 2 * Integer.highestOneBit(span);
    buckets = new int[slots][4];
    sizes = new int[slots];
    ring = slots - 1;
  }

  void push(int cell, int atDistance) {
    int slot = atDistance & ring;
    if (sizes[slot] == buckets[slot].length) {
      buckets[slot] = Arrays.copyOf(buckets[slot], 2 * sizes[slot]);
    }
    buckets[slot][sizes[slot]++] = cell;
    held++;
  }

  boolean isEmpty() {
    return held == 0;
  }

  /** Takes out a cell of the least distance, which {@link #distance} tells afterwards. */
  int pop() {
    while (sizes[distance & ring] == 0) {
      distance++;
    }
    held--;
    int slot = distance & ring;
    return buckets[slot][--sizes[slot]];
  }

  int distance() {
    return distance;
  }
}
