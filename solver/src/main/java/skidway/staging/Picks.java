package skidway.staging;

import org.jspecify.annotations.Nullable;
import skidway.limits.PickHeight;
import skidway.plan.Task;
import skidway.timber.Bundle;

/**
 * The picks of a bundle's pieces: how many people carry each, and how high above the bundle's
 * underside it lies.
 */
final class Picks {
  /** Undersides remembered at once; a power of two. */
  private static final int MOST_KNOWN = 32;

  /**
   * What picking costs when the underside is so high up. Never changes, so threads may share it.
   */
  private record At(double baseM, long ms) {}

  private final CrewTime time;
  private final int[] people;
  private final double[] aboveM;
  private final @Nullable At[] known = new At[MOST_KNOWN];

  Picks(Task task, Bundle bundle, CrewTime time) {
    this.time = time;
    people = bundle.packed().stream().mapToInt(p -> time.carriers(p.piece())).toArray();
    aboveM =
        bundle.packed().stream()
            .mapToDouble(p -> PickHeight.metres(0, bundle, task.layerOnSpot(bundle, p)))
            .toArray();
  }

  /** Person-milliseconds lost at picking all of them when the underside is so high up, metres. */
  long costMs(double baseM) {
    long bits = Double.doubleToRawLongBits(baseM);
    bits ^= bits >>> 32;
    int slot = (int) (bits ^ (bits >>> 16) ^ (bits >>> 24)) & (MOST_KNOWN - 1);
    At at = known[slot];
    if (at == null || at.baseM != baseM) {
      at = new At(baseM, reckonedMs(baseM));
      known[slot] = at;
    }
    return at.ms;
  }

  private long reckonedMs(double baseM) {
    long sum = 0;
    for (int i = 0; i < people.length; i++) {
      sum += time.pickMs(people[i], baseM + aboveM[i]);
    }
    return sum;
  }
}
