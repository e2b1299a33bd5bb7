package skidway.audit.walk;

import java.util.Arrays;

/**
 * A queue of cells by whole-number distance, for distances that never lie further than a known span
 * ahead of the least one: a ring of buckets. A bucket is no wider than the shortest move. So no
 * cell of one bucket can make the way to another of it shorter, and their order does not matter.
 */
final class BucketQueue {
  private final int[][] buckets;
  private final int[] sizes;

  /** The ring has a power of two of buckets, so that this finds a distance's without a division. */
  private final int ring;

  /** So has a bucket's width, by which a distance is shifted to get its bucket's number. */
  private final int shift;

  private int held;
  private int bucket;

  BucketQueue(int shortestMove, int span) {
    shift = 31 - Integer.numberOfLeadingZeros(Math.max(1, shortestMove));
    int slots = 2 * Integer.highestOneBit((span >> shift) + 1);
    buckets = new int[slots][16];
    sizes = new int[slots];
    ring = slots - 1;
  }

  /** The number of the bucket a distance belongs into. */
  int bucketOf(int distance) {
    return distance >> shift;
  }

  void push(int cell, int intoBucket) {
    int slot = intoBucket & ring;
    int[] cells = buckets[slot];
    int size = sizes[slot]++;
    if (size == cells.length) {
      cells = Arrays.copyOf(cells, 2 * size);
      buckets[slot] = cells;
    }
    cells[size] = cell;
    held++;
  }

  boolean isEmpty() {
    return held == 0;
  }

  /** Takes out a cell of the first bucket, which {@link #bucket} tells afterwards. */
  int pop() {
    while (sizes[bucket & ring] == 0) {
      bucket++;
    }
    held--;
    int slot = bucket & ring;
    return buckets[slot][--sizes[slot]];
  }

  int bucket() {
    return bucket;
  }

  /** The least distance that a cell of the first bucket can have. */
  int leastDistance() {
    return bucket << shift;
  }
}
