package skidway.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Bundle;

/**
 * Where every bundle is while the steps are carried out. A step that cannot be done as told is
 * carried out all the same, as far as it goes, so that one fault does not hide the next.
 */
final class Replay {
  private final Map<String, String> loadOnTruck = new HashMap<>();
  private final Map<String, String> waiting = new TreeMap<>();
  private final Map<String, List<String>> built = new HashMap<>();
  private final Map<String, Spot> stackSpots = new HashMap<>();
  private final List<String> waitingPlaces;

  Replay(Scene scene) {
    for (Bundle bundle : scene.task().delivery().bundles()) {
      loadOnTruck.put(bundle.id(), bundle.loadId());
    }
    for (Stack stack : scene.plan().stacks()) {
      stackSpots.putIfAbsent(stack.spot().id(), stack.spot());
    }
    waitingPlaces = scene.plan().waitingPlaces().stream().map(Spot::id).toList();
  }

  /** Bundles on a spot, bottom to top, as far as the steps have been carried out. */
  List<String> builtOn(String spotId) {
    return List.copyOf(built.getOrDefault(spotId, List.of()));
  }

  /** The bundle that waits, by waiting place. */
  Map<String, String> stillWaiting() {
    return Collections.unmodifiableMap(waiting);
  }

  /** Does one step and tells what is wrong with it. */
  List<String> carryOut(Step step) {
    List<String> faults = new ArrayList<>();
    if (step.kind() == StepKind.LIFT_ON) {
      liftFromWaiting(step, faults);
    } else {
      liftOffTruck(step, faults);
    }
    if (step.kind() == StepKind.SET_DOWN) {
      putDownToWait(step, faults);
    } else {
      putOnStack(step, faults);
    }
    return faults;
  }

  private void liftOffTruck(Step step, List<String> faults) {
    Optional<String> load = Optional.ofNullable(loadOnTruck.remove(step.bundleId()));
    if (load.isEmpty()) {
      faults.add(start(step) + "takes " + step.bundleId() + " off a truck where it no longer is.");
    } else if (!load.get().equals(step.fromId())) {
      faults.add(
          start(step)
              + ("takes " + step.bundleId() + " from " + step.fromId())
              + (", but it comes with load " + load.get() + "."));
    }
  }

  private void liftFromWaiting(Step step, List<String> faults) {
    if (waiting.remove(step.fromId(), step.bundleId())) {
      return;
    }
    faults.add(
        start(step)
            + "lifts "
            + step.bundleId()
            + " at "
            + step.fromId()
            + ", but it does not wait there.");
    List<String> stack = built.getOrDefault(step.fromId(), new ArrayList<>());
    int at = stack.indexOf(step.bundleId());
    if (at >= 0 && at < stack.size() - 1) {
      faults.add(
          start(step) + "lifts " + step.bundleId() + " from under " + stack.get(at + 1) + ".");
    }
    stack.remove(step.bundleId());
  }

  private void putDownToWait(Step step, List<String> faults) {
    if (!waitingPlaces.contains(step.toId())) {
      faults.add(
          start(step)
              + "sets "
              + step.bundleId()
              + " down at "
              + step.toId()
              + ", no waiting place.");
    }
    Optional.ofNullable(waiting.put(step.toId(), step.bundleId()))
        .ifPresent(
            there ->
                faults.add(
                    start(step)
                        + ("sets " + step.bundleId() + " down at " + step.toId())
                        + (", where " + there + " still waits.")));
  }

  private void putOnStack(Step step, List<String> faults) {
    List<String> stack = built.computeIfAbsent(step.toId(), s -> new ArrayList<>());
    stack.add(step.bundleId());
    Optional<Spot> spot = Optional.ofNullable(stackSpots.get(step.toId()));
    if (spot.isEmpty()) {
      faults.add(start(step) + "goes to " + step.toId() + ", where no stack is planned.");
      return;
    }
    int tier = spot.get().kind() == SpotKind.RACK ? 0 : stack.size();
    if (step.tier() != tier) {
      faults.add(
          start(step)
              + ("puts " + step.bundleId() + " on tier " + step.tier() + " of " + step.toId())
              + (", but it gets to tier " + tier + "."));
    }
  }

  private static String start(Step step) {
    return "Step " + step.number() + " ";
  }
}
