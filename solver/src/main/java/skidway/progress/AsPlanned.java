package skidway.progress;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;

/**
 * Where the bundles lie once a load has been unloaded by the plan's steps. A bundle set down to
 * wait that is lifted on while the same truck is unloaded, counts only where it ends up; one that
 * waits for a later truck is lifted on with that one.
 */
public final class AsPlanned {
  /**
   * A bundle put down.
   *
   * @param tier 1 = bottom; 0 in a rack
   */
  public record Put(String bundleId, String spotId, int tier) {}

  private AsPlanned() {}

  /** The bundles that the steps of a load put down, in the order of the lifts. */
  public static List<Put> of(Plan plan, String loadId) {
    Map<String, Put> last = new LinkedHashMap<>();
    String unloading = "";
    for (Step step : plan.steps()) {
      unloading = step.kind() == StepKind.LIFT_ON ? unloading : step.fromId();
      if (unloading.equals(loadId)) {
        last.remove(step.bundleId()); // so that it comes in the order of its last lift
        last.put(step.bundleId(), new Put(step.bundleId(), step.toId(), step.tier()));
      }
    }
    return new ArrayList<>(last.values());
  }

  /**
   * The lifts of what lay there already when a plan began, in order: a bundle that is set aside on
   * the way comes twice.
   */
  public static List<Put> moves(Plan plan) {
    List<Put> moves = new ArrayList<>();
    Set<String> aside = new HashSet<>();
    for (Step step : plan.steps()) {
      boolean on = step.kind() == StepKind.LIFT_ON && aside.contains(step.bundleId());
      if (step.kind() == StepKind.SET_ASIDE) {
        aside.add(step.bundleId());
      }
      if (on || step.kind() == StepKind.SET_ASIDE || step.kind() == StepKind.MOVE) {
        moves.add(new Put(step.bundleId(), step.toId(), step.tier()));
      }
    }
    return moves;
  }
}
