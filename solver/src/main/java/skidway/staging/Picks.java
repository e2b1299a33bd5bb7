package skidway.staging;

import skidway.limits.PickHeight;
import skidway.plan.Task;
import skidway.timber.Bundle;

/**
 * The picks of a bundle's pieces: how many people carry each, and how high above the bundle's
 * underside it lies, metres.
 */
final class Picks {
  final int[] people;
  final double[] aboveM;

  Picks(Task task, Bundle bundle, CrewTime time) {
    people = bundle.packed().stream().mapToInt(p -> time.carriers(p.piece())).toArray();
    aboveM =
        bundle.packed().stream()
            .mapToDouble(p -> PickHeight.metres(0, bundle, task.layerOnSpot(bundle, p)))
            .toArray();
  }
}
