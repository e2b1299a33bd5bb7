package skidway.audit;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Spot;
import skidway.site.Zone;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/** The plan laid beside the job: its stacks with the bundles and zones that really exist. */
final class Scene {
  private final Task task;
  private final Plan plan;
  private final List<Standing> standings;

  Scene(Task task, Plan plan) {
    this.task = task;
    this.plan = plan;
    standings = plan.stacks().stream().map(this::standing).toList();
  }

  private Standing standing(Stack stack) {
    List<Bundle> bundles =
        stack.bundleIds().stream().map(task.delivery()::bundle).flatMap(Optional::stream).toList();
    return Standing.stacked(stack.spot(), zone(stack.spot()), bundles, bearers(stack.spot()));
  }

  /** Beneath the lowest bundle of a stack. */
  private Optional<BearerRow> bearers(Spot spot) {
    return steps().stream()
        .filter(step -> step.kind() != StepKind.SET_DOWN && step.tier() == 1)
        .filter(step -> step.toId().equals(spot.id()))
        .findFirst()
        .map(Step::bearers);
  }

  private Optional<Zone> zone(Spot spot) {
    return task.site().zone(spot.zoneId());
  }

  Task task() {
    return task;
  }

  Plan plan() {
    return plan;
  }

  double setting(Setting setting) {
    return task.settings().get(setting);
  }

  /** What lies on each stack and rack in the end. */
  List<Standing> standings() {
    return standings;
  }

  /** The same, and every bundle that a step sets down on a waiting place. */
  List<Standing> allStandings() {
    return Stream.concat(standings.stream(), waiting()).toList();
  }

  private Stream<Standing> waiting() {
    return steps().stream()
        .filter(step -> step.kind() == StepKind.SET_DOWN)
        .flatMap(step -> waiting(step).stream())
        .distinct();
  }

  private Optional<Standing> waiting(Step step) {
    return plan.waitingPlaces().stream()
        .filter(spot -> spot.id().equals(step.toId()))
        .findFirst()
        .flatMap(
            spot ->
                task.delivery().bundle(step.bundleId()).map(bundle -> waiting(step, spot, bundle)));
  }

  private Standing waiting(Step step, Spot spot, Bundle bundle) {
    return Standing.waiting(spot, zone(spot), bundle, step.bearers());
  }

  /**
   * The most that may lie on a deck or yard at once: every stack and rack as it is in the end, and
   * on each waiting place the heaviest bundle that waits there, as if none had been lifted on yet.
   */
  List<Standing> lying(Zone zone) {
    Map<String, Standing> heaviest = new LinkedHashMap<>();
    waiting()
        .filter(waiting -> waiting.spot().zoneId().equals(zone.id()))
        .forEach(
            waiting ->
                heaviest.merge(waiting.id(), waiting, (a, b) -> b.massKg() > a.massKg() ? b : a));
    Stream<Standing> stacks =
        standings.stream()
            .filter(stack -> stack.spot().zoneId().equals(zone.id()))
            .filter(stack -> !stack.bundles().isEmpty());
    return Stream.concat(stacks, heaviest.values().stream()).toList();
  }

  /** Every stack and rack, then every waiting place, that can be drawn. */
  List<Place> places() {
    return Stream.concat(
            soundSpots(plan.stacks().stream().map(Stack::spot)).map(Place::ofStack),
            soundSpots(plan.waitingPlaces().stream()).map(Place::ofWaiting))
        .toList();
  }

  /** The spots of all stacks that can be drawn. */
  List<Spot> stackSpots() {
    return soundSpots(plan.stacks().stream().map(Stack::spot)).toList();
  }

  /** The spot of a stack or the waiting place of an id. */
  Optional<Spot> planned(String id) {
    return Stream.concat(plan.stacks().stream().map(Stack::spot), plan.waitingPlaces().stream())
        .filter(spot -> spot.id().equals(id))
        .findFirst();
  }

  /** The spot of a stack or the waiting place of an id, if it can be drawn. */
  Optional<Spot> spot(String id) {
    return planned(id).filter(Soundness::sound);
  }

  /** The steps by their numbers. */
  List<Step> steps() {
    return plan.steps().stream().sorted(Comparator.comparingInt(Step::number)).toList();
  }

  private static Stream<Spot> soundSpots(Stream<Spot> spots) {
    return spots.filter(Soundness::sound);
  }
}
