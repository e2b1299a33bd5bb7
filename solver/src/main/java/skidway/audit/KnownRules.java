package skidway.audit;

import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Reason;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.site.Site;
import skidway.site.Spot;

/** Checks that a plan speaks only of what the job has, in numbers that make sense. */
final class KnownRules {
  private final Scene scene;
  private final Plan plan;
  private final Site site;
  private final Ledger ledger;

  KnownRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.plan = scene.plan();
    this.site = scene.task().site();
    this.ledger = ledger;
  }

  void check() {
    plan.stacks().forEach(this::knownBundles);
    plan.stacks().forEach(stack -> knownSpot(stack.spot()));
    plan.waitingPlaces().forEach(this::knownSpot);
    plan.steps().forEach(this::knownStep);
    plan.unplaced().stream().map(Unplaced::bundleId).forEach(this::knownUnplaced);
    plan.reasons().stream().map(Reason::bundleId).forEach(this::knownReason);
  }

  private void knownBundles(Stack stack) {
    String spotId = stack.spot().id();
    if (stack.bundleIds().isEmpty()) {
      known(spotId, "Stack " + spotId + " is planned without a bundle.");
    }
    for (String bundleId : stack.bundleIds()) {
      if (unknownBundle(bundleId)) {
        known(spotId, "Stack " + spotId + " holds " + bundleId + ", which is not delivered.");
      }
    }
  }

  private void knownSpot(Spot spot) {
    if (site.zone(spot.zoneId()).isEmpty()) {
      known(
          spot.id(),
          "Spot " + spot.id() + " lies on " + spot.zoneId() + ", which the site does not have.");
    }
    if (!Soundness.sound(spot)) {
      known(spot.id(), "Spot " + spot.id() + " has numbers that cannot be drawn.");
    }
    boolean twoPlaces =
        Stream.of(
                plan.stacks().stream().map(Stack::spot),
                plan.waitingPlaces().stream(),
                scene.task().start().stacks().stream().map(Stack::spot),
                scene.task().start().marked().stream())
            .flatMap(spots -> spots)
            .anyMatch(other -> other.id().equals(spot.id()) && !GivenSpots.same(spot, other));
    if (twoPlaces) {
      known(spot.id(), "The code " + spot.id() + " stands for two different places.");
    }
    new GivenSpots(site.spots()).fault(spot).ifPresent(fault -> known(spot.id(), fault));
  }

  private void knownStep(Step step) {
    String where = "step " + step.number();
    if (unknownBundle(step.bundleId())) {
      known(where, "Step " + step.number() + " lifts " + step.bundleId() + ", not delivered.");
    }
    Stream.of(step.standId(), step.pickStandId())
        .filter(id -> !(id.isEmpty() && site.byHand()))
        .filter(id -> id.equals(step.standId()) || !id.isEmpty())
        .distinct()
        .filter(id -> site.machine().stands().stream().noneMatch(s -> s.id().equals(id)))
        .forEach(id -> unknownStand(step, id));
    if (scene.planned(step.toId()).isEmpty()) {
      known(
          where,
          "Step " + step.number() + " goes to " + step.toId() + ", which is not in the plan.");
    }
  }

  private void unknownStand(Step step, String standId) {
    known(
        "step " + step.number(),
        standId.isEmpty()
            ? "Step " + step.number() + " lifts from no stand of the machine."
            : ("Step " + step.number() + " lifts from stand " + standId)
                + ", which the site does not have.");
  }

  private void knownUnplaced(String bundleId) {
    if (unknownBundle(bundleId)) {
      known(bundleId, bundleId + " is listed as without a spot, but is not delivered.");
    }
  }

  private void knownReason(String bundleId) {
    if (unknownBundle(bundleId)) {
      known(bundleId, "A reason is given for " + bundleId + ", which is not delivered.");
    }
  }

  private boolean unknownBundle(String bundleId) {
    return scene.task().delivery().bundle(bundleId).isEmpty();
  }

  private void known(String where, String sentence) {
    ledger.broken(Rule.KNOWN, where, 1, 0, sentence);
  }
}
