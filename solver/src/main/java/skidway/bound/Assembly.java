package skidway.bound;

import java.util.ArrayList;
import java.util.List;

/** Sets of bundles on spots that go together: no bundle twice, no spot in another's way. */
final class Assembly {
  private final Ground ground;
  private final List<Column> columns = new ArrayList<>();
  private final boolean[] placed;
  private final boolean[] used;

  /** How many spots in use exclude a spot, by moment and spot. */
  private final int[][] excluded;

  private int left;
  private long costMs;
  private long excessMs;

  Assembly(Ground ground, int moments) {
    this.ground = ground;
    this.placed = new boolean[ground.bundles()];
    this.used = new boolean[ground.spots()];
    this.excluded = new int[moments][ground.spots()];
    this.left = placed.length;
  }

  /** Whether a set still fits in. */
  boolean takes(Column column) {
    if (used[column.spot]) {
      return false;
    }
    for (int b : column.set) {
      if (placed[b]) {
        return false;
      }
    }
    for (int moment = 0; moment < excluded.length; moment++) {
      if (excluded[moment][column.spot] > 0 && (column.moments >> moment & 1) == 1) {
        return false;
      }
    }
    return true;
  }

  void add(Column column) {
    columns.add(column);
    count(column, 1);
  }

  /** Takes out a set that is in. */
  void remove(Column column) {
    columns.remove(columns.lastIndexOf(column));
    count(column, -1);
  }

  private void count(Column column, int by) {
    used[column.spot] = by > 0;
    for (int b : column.set) {
      placed[b] = by > 0;
    }
    for (int moment = 0; moment < excluded.length; moment++) {
      if ((column.moments >> moment & 1) == 1) {
        for (int other : ground.excludes(column.spot)) {
          excluded[moment][other] += by;
        }
      }
    }
    left -= by * column.set.length;
    costMs += by * column.costMs;
    excessMs += by * column.excessMs;
  }

  /** Its sets, in the order in which they came. */
  List<Column> columns() {
    return columns;
  }

  boolean isPlaced(int bundle) {
    return placed[bundle];
  }

  /** How many bundles are in none of its sets. */
  int left() {
    return left;
  }

  long costMs() {
    return costMs;
  }

  /** By how much every plan that has these sets is above the bound at least. */
  long excessMs() {
    return excessMs;
  }

  /** The spot of each bundle; nothing must be left. */
  int[] spotOf() {
    int[] spotOf = new int[placed.length];
    for (Column column : columns) {
      for (int b : column.set) {
        spotOf[b] = column.spot;
      }
    }
    return spotOf;
  }
}
