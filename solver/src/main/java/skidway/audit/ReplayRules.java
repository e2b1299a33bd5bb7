package skidway.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.site.SpotKind;

/**
 * Checks the unloading steps by carrying them out one by one: each must be possible when its turn
 * comes, and in the end everything must lie as planned.
 */
final class ReplayRules {
  private final Scene scene;
  private final Ledger ledger;

  ReplayRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    scene.plan().waitingPlaces().stream()
        .filter(spot -> spot.kind() == SpotKind.RACK)
        .forEach(this::waitingInRack);
    Replay replay = new Replay(scene);
    HalfwayRules halfway = new HalfwayRules(scene, ledger, replay);
    int lastNumber = 0;
    for (Step step : scene.steps()) {
      if (step.number() != lastNumber + 1) {
        stepsBuild(
            step, "Step " + step.number() + " comes where step " + (lastNumber + 1) + " should.");
      }
      lastNumber = step.number();
      if (scene.task().site().byHand()) {
        byHand(step);
      }
      replay.waitFor(step);
      boolean opens = replay.isEmpty(step.toId());
      replay.carryOut(step).forEach(fault -> stepsBuild(step, fault));
      if (opens) {
        besideWhatStillLies(step, replay);
      }
      halfway.after(step);
    }
    replay.stillWaiting().forEach(this::leftWaiting);
    plannedBySpot().forEach((spotId, planned) -> builtAsPlanned(spotId, planned, replay));
  }

  /** People take a bundle apart at the truck; none is lifted as a whole after that. */
  private void byHand(Step step) {
    if (step.kind() != StepKind.PLACE) {
      stepsBuild(
          step,
          ("Step " + step.number() + " lifts " + step.bundleId())
              + " as a whole, but no machine is there: its timbers go from the truck to their stack.");
    }
    scene
        .task()
        .delivery()
        .bundle(step.bundleId())
        .map(bundle -> bundle.mass().highKg())
        .filter(massKg -> !(Math.abs(step.massKg() - massKg) <= ToldMass.ROUNDING_KG))
        .ifPresent(
            massKg ->
                new ToldMass(ledger, scene.task().figures())
                    .broken(
                        Rule.STEPS_BUILD,
                        StepPlaces.where(step),
                        StepPlaces.lift(step) + " is told to weigh ",
                        step.massKg(),
                        massKg));
  }

  /**
   * What lay there when the plan began and has not been moved away yet needs its gap as much as
   * what the plan leaves there.
   */
  private void besideWhatStillLies(Step step, Replay replay) {
    List<Place> planned = scene.moments().get(replay.moment()).places();
    List<Place> leaving =
        scene.task().start().stacks().stream()
            .map(Stack::spot)
            .filter(spot -> Soundness.sound(spot) && !spot.id().equals(step.toId()))
            .filter(spot -> !replay.lyingOn(spot.id()).isEmpty())
            .filter(spot -> planned.stream().noneMatch(place -> place.id().equals(spot.id())))
            .map(Place::ofStack)
            .toList();
    SpacingRules spacing = new SpacingRules(scene, ledger);
    ledger.during(" That is so at step " + step.number() + ".");
    planned.stream()
        .filter(place -> place.id().equals(step.toId()))
        .limit(1)
        .forEach(opened -> leaving.forEach(there -> spacing.spotsApart(opened, there)));
    ledger.during("");
  }

  /** Only a stack's spot takes a bundle that lies flat and is lifted off again as it is. */
  private void waitingInRack(Spot spot) {
    String sentence = "Waiting place " + spot.id() + " is a rack, where no bundle can be set down.";
    ledger.broken(Rule.STEPS_BUILD, spot.id(), 1, 0, sentence);
  }

  private void leftWaiting(String placeId, String bundleId) {
    ledger.broken(
        Rule.STEPS_BUILD,
        placeId,
        1,
        0,
        bundleId + " is left waiting at " + placeId + " when all steps are done.");
  }

  private void builtAsPlanned(String spotId, List<Stack> stacks, Replay replay) {
    List<String> planned = stacks.stream().flatMap(s -> s.bundleIds().stream()).toList();
    List<String> built =
        replay.builtOn(spotId).stream()
            // What stays where it lay and should not is told where it is missed.
            .filter(id -> planned.contains(id) || !scene.layAt(id, spotId))
            .toList();
    for (String bundleId : without(planned, built)) {
      String sentence = "No step brings " + bundleId + " to " + spotId + ", where it is planned.";
      ledger.broken(Rule.STEPS_BUILD, spotId, 1, 0, sentence);
    }
    for (String bundleId : without(built, planned)) {
      String sentence = "The steps bring " + bundleId + " to " + spotId + ", the plan does not.";
      ledger.broken(Rule.STEPS_BUILD, spotId, 1, 0, sentence);
    }
    if (sorted(built).equals(sorted(planned)) && !isRack(spotId)) {
      stacks.forEach(stack -> orderAsPlanned(stack, built));
    }
  }

  private void orderAsPlanned(Stack stack, List<String> builtOnSpot) {
    List<String> built = builtOnSpot.stream().filter(stack.bundleIds()::contains).toList();
    if (!built.equals(stack.bundleIds())) {
      ledger.broken(
          Rule.STEPS_BUILD,
          stack.spot().id(),
          1,
          0,
          "The steps build stack "
              + stack.spot().id()
              + " from the bottom as "
              + String.join(", ", built)
              + "; the plan says "
              + String.join(", ", stack.bundleIds())
              + ".");
    }
  }

  private Map<String, List<Stack>> plannedBySpot() {
    Map<String, List<Stack>> planned = new LinkedHashMap<>();
    for (Stack stack : scene.plan().stacks()) {
      planned.computeIfAbsent(stack.spot().id(), s -> new ArrayList<>()).add(stack);
    }
    return planned;
  }

  private boolean isRack(String spotId) {
    return scene.planned(spotId).filter(spot -> spot.kind() == SpotKind.RACK).isPresent();
  }

  private static List<String> without(List<String> all, List<String> some) {
    List<String> rest = new ArrayList<>(all);
    some.forEach(rest::remove);
    return rest;
  }

  private static List<String> sorted(List<String> ids) {
    return ids.stream().sorted().toList();
  }

  private void stepsBuild(Step step, String sentence) {
    ledger.broken(Rule.STEPS_BUILD, "step " + step.number(), 1, 0, sentence);
  }
}
