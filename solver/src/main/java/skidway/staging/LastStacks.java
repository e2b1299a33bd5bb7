package skidway.staging;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The last two stacks that were priced on each spot. Most changes that a search tries are taken
 * back at once, so that what a spot gets is most often what it had a moment ago.
 */
final class LastStacks {
  private final int[][] members;
  private final int[] count;
  private final @Nullable StackCost[] costs;

  LastStacks(int spots) {
    members = new int[2 * spots][];
    count = new int[2 * spots];
    costs = new StackCost[2 * spots];
  }

  /** What the first {@code k} bundles cost on a spot, if they are one of the last two stacks. */
  @Nullable StackCost find(int spot, int[] bundles, int k) {
    for (int slot = 2 * spot; slot < 2 * spot + 2; slot++) {
      StackCost cost = costs[slot];
      if (cost != null && count[slot] == k && same(members[slot], bundles, k)) {
        return cost;
      }
    }
    return null;
  }

  /** Remembers a stack in the place of the one that was not put here last. */
  void put(int spot, int[] bundles, int k, StackCost cost) {
    int newer = 2 * spot;
    int older = newer + 1;
    int[] row = members[older];
    members[older] = members[newer];
    count[older] = count[newer];
    costs[older] = costs[newer];
    if (row == null || row.length < k) {
      row = Arrays.copyOf(bundles, Math.max(4, k));
    } else {
      System.arraycopy(bundles, 0, row, 0, k);
    }
    members[newer] = row;
    count[newer] = k;
    costs[newer] = cost;
  }

  private static boolean same(int[] a, int[] b, int k) {
    for (int i = 0; i < k; i++) {
      if (a[i] != b[i]) {
        return false;
      }
    }
    return true;
  }
}
