package skidway.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Step;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/**
 * Where every bundle is while the steps are carried out, beginning with what lies there already. A
 * load comes in its time; by then bundles whose last piece is pulled have left their stacks. A step
 * that cannot be done as told is carried out all the same, as far as it goes, so that one fault
 * does not hide the next.
 */
final class Replay {
  private final OnSite onSite;
  private final Start start;
  private final Map<String, Bundle> delivered = new HashMap<>();
  private final Map<String, String> loadOnTruck = new HashMap<>();
  private final Map<String, String> waiting = new TreeMap<>();

  /** What came to each spot and was not lifted off again, bottom to top; also what is used up. */
  private final Map<String, List<String>> built = new TreeMap<>();

  /** Beneath each bundle, as the last step that put it down tells, or as it was from the start. */
  private final Map<String, BearerRow> bearers;

  private final Map<String, Spot> stackSpots = new HashMap<>();
  private final List<String> waitingPlaces;
  private int moment;

  Replay(Scene scene) {
    onSite = scene.onSite();
    start = scene.task().start();
    bearers = new HashMap<>(start.bearers());
    for (Bundle bundle : scene.task().delivery().bundles()) {
      delivered.put(bundle.id(), bundle);
      if (!start.lies(bundle.id())) {
        loadOnTruck.put(bundle.id(), bundle.loadId());
      }
    }
    for (Stack stack : start.stacks()) {
      pile(stack.spot().id()).addAll(stack.bundleIds());
    }
    for (Stack stack : scene.plan().stacks()) {
      stackSpots.putIfAbsent(stack.spot().id(), stack.spot());
    }
    waitingPlaces = scene.plan().waitingPlaces().stream().map(Spot::id).toList();
  }

  /** How far time has come. */
  int moment() {
    return moment;
  }

  /** Bundles that came to a spot and stayed, bottom to top, as far as the steps are done. */
  List<String> builtOn(String spotId) {
    return List.copyOf(built.getOrDefault(spotId, List.of()));
  }

  /** Bundles that lie on a spot now, bottom to top. */
  List<String> lyingOn(String spotId) {
    return builtOn(spotId).stream().filter(this::isThere).toList();
  }

  /** The spots on which something has come, in the order of their ids. */
  List<String> usedSpots() {
    return List.copyOf(built.keySet());
  }

  /** What lies beneath a bundle, if it is known. */
  Optional<BearerRow> bearersUnder(Bundle bundle) {
    return Optional.ofNullable(bearers.get(bundle.id()));
  }

  /** Whether nothing lies or waits on a spot. */
  boolean isEmpty(String spotId) {
    return lyingOn(spotId).isEmpty() && !waiting.containsKey(spotId);
  }

  /** The bundle that waits, by waiting place. */
  Map<String, String> stillWaiting() {
    return Collections.unmodifiableMap(waiting);
  }

  private List<String> pile(String spotId) {
    return built.computeIfAbsent(spotId, s -> new ArrayList<>());
  }

  private boolean isThere(String bundleId) {
    return Optional.ofNullable(delivered.get(bundleId))
        .map(bundle -> onSite.isThere(bundle, moment))
        .orElse(true);
  }

  /** Lets time pass until the bundle of a step is there. */
  void waitFor(Step step) {
    Optional.ofNullable(delivered.get(step.bundleId()))
        .filter(bundle -> step.kind().offTruck())
        .ifPresent(bundle -> moment = Math.max(moment, onSite.comes(bundle)));
  }

  /** Does one step and tells what is wrong with it. */
  List<String> carryOut(Step step) {
    waitFor(step);
    List<String> faults = new ArrayList<>();
    switch (step.kind()) {
      case PLACE, SET_DOWN -> liftOffTruck(step, faults);
      case LIFT_ON -> liftFromWaiting(step, faults);
      case MOVE, SET_ASIDE -> liftFromSpot(step, faults);
    }
    bearers.put(step.bundleId(), step.bearers());
    if (step.kind().waits()) {
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
    fromUnder(step, faults);
    pile(step.fromId()).remove(step.bundleId());
  }

  private void liftFromSpot(Step step, List<String> faults) {
    if (!start.lies(step.bundleId())) {
      faults.add(
          start(step)
              + ("moves " + step.bundleId())
              + ", which did not lie on site when the plan began.");
    }
    if (start.fixed().contains(step.bundleId())) {
      faults.add(start(step) + "lifts " + step.bundleId() + ", which must stay where it lies.");
    }
    if (lyingOn(step.fromId()).contains(step.bundleId())) {
      fromUnder(step, faults);
    } else {
      faults.add(
          start(step)
              + ("lifts " + step.bundleId() + " at " + step.fromId())
              + ", but it does not lie there.");
    }
    if (isRack(step.fromId())) {
      faults.add(
          start(step)
              + ("lifts " + step.bundleId() + " out of rack " + step.fromId())
              + ", where its pieces stand on end.");
    }
    built.values().forEach(pile -> pile.remove(step.bundleId()));
  }

  private void fromUnder(Step step, List<String> faults) {
    List<String> stack = lyingOn(step.fromId());
    int at = stack.indexOf(step.bundleId());
    if (at >= 0 && at < stack.size() - 1 && !isRack(step.fromId())) {
      faults.add(
          start(step) + "lifts " + step.bundleId() + " from under " + stack.get(at + 1) + ".");
    }
  }

  private boolean isRack(String spotId) {
    return start.stacks().stream()
        .map(Stack::spot)
        .anyMatch(spot -> spot.id().equals(spotId) && spot.kind() == SpotKind.RACK);
  }

  private void putDownToWait(Step step, List<String> faults) {
    String sets = start(step) + "sets " + step.bundleId() + " down at " + step.toId();
    if (!waitingPlaces.contains(step.toId())) {
      faults.add(sets + ", no waiting place.");
    }
    lyingOn(step.toId()).stream()
        .findFirst()
        .ifPresent(there -> faults.add(sets + ", where " + there + " lies."));
    Optional.ofNullable(waiting.put(step.toId(), step.bundleId()))
        .ifPresent(there -> faults.add(sets + ", where " + there + " still waits."));
  }

  private void putOnStack(Step step, List<String> faults) {
    List<String> beneath = lyingOn(step.toId());
    pile(step.toId()).add(step.bundleId());
    Optional<Spot> spot = Optional.ofNullable(stackSpots.get(step.toId()));
    if (spot.isEmpty()) {
      faults.add(start(step) + "goes to " + step.toId() + ", where no stack is planned.");
      return;
    }
    boolean rack = spot.get().kind() == SpotKind.RACK;
    int tier = rack ? 0 : beneath.size() + 1;
    if (step.tier() != tier) {
      faults.add(
          start(step)
              + ("puts " + step.bundleId() + " on tier " + step.tier() + " of " + step.toId())
              + (", but it gets to tier " + tier + "."));
    }
    if (!rack) {
      beneath.stream()
          .filter(start.fixed()::contains)
          .findFirst()
          .ifPresent(
              open ->
                  faults.add(
                      start(step)
                          + ("puts " + step.bundleId() + " on " + open + " at " + step.toId())
                          + ", which is open or locked."));
    }
  }

  private static String start(Step step) {
    return "Step " + step.number() + " ";
  }
}
