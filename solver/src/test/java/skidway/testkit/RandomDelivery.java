package skidway.testkit;

import static skidway.testkit.BundleBuilder.aBundle;

import java.util.Random;
import skidway.timber.Bundle;

/** Invents bundles whose pieces are spread over walls and courses, as a mill would pack them. */
public final class RandomDelivery {
  private RandomDelivery() {}

  public static Bundle[] bundles(Random random, int count) {
    Bundle[] bundles = new Bundle[count];
    int[] next = new int[5];
    for (int b = 0; b < count; b++) {
      double length = 2 + random.nextInt(4) * 0.5;
      BundleBuilder bundle =
          aBundle("B" + (b + 1))
              .load(b < count / 2 ? "L1" : "L2", b + 1)
              .size(length, 0.5 + random.nextInt(2) * 0.1, 0.2 + random.nextInt(3) * 0.1);
      int pieces = 1 + random.nextInt(4);
      for (int p = 0; p < pieces; p++) {
        int wall = 1 + random.nextInt(4);
        bundle.piece("W" + wall, 1 + random.nextInt(8), ++next[wall], length - 0.5);
      }
      bundles[b] = bundle.build();
    }
    return bundles;
  }
}
