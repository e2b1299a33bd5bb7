package skidway.layout;

import java.util.Arrays;

/** Divides a number of spots among groups: equal shares, what a group cannot use to the others. */
final class Quotas {
  private Quotas() {}

  /**
   * Shares by group.
   *
   * @param sizes what each group has
   * @return never more than the group has, in sum never more than the total
   */
  static int[] divide(int[] sizes, int total) {
    int[] shares = new int[sizes.length];
    int left = total;
    int open = sizes.length;
    Integer[] smallestFirst = new Integer[sizes.length];
    Arrays.setAll(smallestFirst, i -> i);
    Arrays.sort(smallestFirst, (a, b) -> Integer.compare(sizes[a], sizes[b]));
    for (int group : smallestFirst) {
      shares[group] = Math.min(sizes[group], left / open);
      left -= shares[group];
      open--;
    }
    return shares;
  }
}
