package skidway.sheet;

import java.util.List;
import java.util.Optional;
import skidway.plan.Task;
import skidway.timber.Bundle;
import skidway.timber.Load;

/**
 * One bundle of a stack as it is shown.
 *
 * @param loadTurn 1 for the load that arrives first; 0 when the delivery does not know the bundle
 */
record Tier(String bundleId, Optional<Bundle> bundle, int loadTurn) {
  static Tier of(Task task, String bundleId) {
    Optional<Bundle> bundle = task.delivery().bundle(bundleId);
    List<String> loads = task.delivery().loads().stream().map(Load::id).toList();
    return new Tier(bundleId, bundle, bundle.map(b -> loads.indexOf(b.loadId()) + 1).orElse(0));
  }

  /** What it weighs at most. */
  double massKg() {
    return bundle.map(b -> b.mass().highKg()).orElse(0.0);
  }

  double heightM() {
    return bundle.map(Bundle::heightM).orElse(0.0);
  }
}
