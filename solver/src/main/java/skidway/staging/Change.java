package skidway.staging;

import java.util.Arrays;

/** Collects which bundles go where; the first word about a bundle counts. */
final class Change {
  private int[] bundles = new int[8];
  private int[] targets = new int[8];
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
    }
    bundles[size] = bundle;
    targets[size++] = spot;
  }

  Reassign toMove() {
    return new Reassign(Arrays.copyOf(bundles, size), Arrays.copyOf(targets, size));
  }
}
