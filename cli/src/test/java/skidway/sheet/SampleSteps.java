package skidway.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/** Writes down the unloading of hand-made stacks: a bundle that comes off too early waits. */
final class SampleSteps {
  private final Task task;
  private final Spot waiting;
  private final List<Step> steps = new ArrayList<>();
  private final Map<String, Integer> laid = new HashMap<>();

  private SampleSteps(Task task, Spot waiting) {
    this.task = task;
    this.waiting = waiting;
  }

  static List<Step> of(Task task, List<Stack> stacks, Spot waiting) {
    SampleSteps all = new SampleSteps(task, waiting);
    List<Bundle> onHold = new ArrayList<>();
    for (Bundle bundle : task.delivery().bundles()) {
      for (Stack stack : stacks) {
        int tier = stack.bundleIds().indexOf(bundle.id()) + 1;
        if (tier == 0) {
          continue;
        }
        boolean rack = stack.spot().kind() == SpotKind.RACK;
        if (rack || tier == all.laid.getOrDefault(stack.spot().id(), 0) + 1) {
          all.add(StepKind.PLACE, bundle, bundle.loadId(), stack.spot(), rack ? 0 : tier);
          for (Bundle waiter : List.copyOf(onHold)) {
            if (all.liftOn(waiter, stack)) {
              onHold.remove(waiter);
            }
          }
        } else {
          all.add(StepKind.SET_DOWN, bundle, bundle.loadId(), waiting, 1);
          onHold.add(bundle);
        }
      }
    }
    return all.steps;
  }

  private boolean liftOn(Bundle bundle, Stack stack) {
    int tier = stack.bundleIds().indexOf(bundle.id()) + 1;
    boolean next = tier > 0 && tier == laid.getOrDefault(stack.spot().id(), 0) + 1;
    if (next) {
      add(StepKind.LIFT_ON, bundle, waiting.id(), stack.spot(), tier);
    }
    return next;
  }

  private void add(StepKind kind, Bundle bundle, String from, Spot to, int tier) {
    laid.merge(to.id(), 1, Integer::sum);
    Point place = to.footprint().centre();
    MachineStand stand =
        task.site().machine().stands().stream()
            .min((a, b) -> Double.compare(a.at().distanceTo(place), b.at().distanceTo(place)))
            .orElseThrow();
    double reachM = stand.at().distanceTo(place);
    double capacityKg =
        task.site().machine().chart().stream()
            .filter(row -> row.reachM() >= reachM)
            .mapToDouble(row -> row.capacityKg())
            .findFirst()
            .orElse(0);
    steps.add(
        new Step(
            steps.size() + 1,
            kind,
            bundle.id(),
            from,
            to.id(),
            tier,
            stand.id(),
            reachM,
            bundle.mass().highKg(),
            capacityKg,
            bearers(bundle, to)));
  }

  /** A foot in from the ends, no farther apart than 4 ft; none in a rack. */
  private static BearerRow bearers(Bundle bundle, Spot to) {
    if (to.kind() == SpotKind.RACK) {
      return BearerRow.NONE;
    }
    double betweenM = bundle.lengthM() - 2 * 0.3048;
    int gaps = (int) Math.ceil(betweenM / 1.2192 - 1e-9);
    return new BearerRow(gaps + 1, betweenM / gaps, 0.3048, bundle.widthM());
  }
}
