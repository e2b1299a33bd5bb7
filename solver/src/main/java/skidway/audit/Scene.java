package skidway.audit;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Spot;
import skidway.site.Zone;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;

/**
 * The plan laid beside the job: its stacks with the bundles and zones that really exist. The whole
 * plan, or what of it is there at one moment: bundles come when a moment begins and only go until
 * the next, so most is there when it begins.
 */
final class Scene {
  /** The whole plan. */
  private static final int ALL = -1;

  private final Task task;
  private final Plan plan;
  private final OnSite onSite;
  private final int moment;
  private final List<Step> steps;
  private final List<Stack> stacks;
  private final List<Standing> standings;
  private final List<Waiting> waiting;

  /** A bundle on a waiting place, from one moment to another. */
  private record Waiting(Standing standing, int from, int to) {}

  Scene(Task task, Plan plan, OnSite onSite) {
    this(task, plan, onSite, ALL);
  }

  private Scene(Task task, Plan plan, OnSite onSite, int moment) {
    this.task = task;
    this.plan = plan;
    this.onSite = onSite;
    this.moment = moment;
    steps = plan.steps().stream().sorted(Comparator.comparingInt(Step::number)).toList();
    stacks = plan.stacks().stream().filter(this::stands).toList();
    standings = stacks.stream().map(this::standing).toList();
    waiting = allWaiting().stream().filter(this::isThere).toList();
  }

  private Scene(Scene whole, List<Standing> standings, List<Standing> waits) {
    task = whole.task;
    plan = whole.plan;
    onSite = whole.onSite;
    moment = ALL;
    steps = whole.steps;
    stacks = List.of();
    this.standings = List.copyOf(standings);
    waiting = waits.stream().map(standing -> new Waiting(standing, 0, 0)).toList();
  }

  /** The site between two steps, as far as it matters what lies and waits where. */
  Scene halfway(List<Standing> lying, List<Standing> waits) {
    return new Scene(this, lying, waits);
  }

  /** The plan at each moment, one after the other. */
  List<Scene> moments() {
    return IntStream.range(0, onSite.moments())
        .mapToObj(m -> new Scene(task, plan, onSite, m))
        .toList();
  }

  /** To end a sentence about this moment with; empty for the first one and for the whole plan. */
  String when() {
    return moment <= 0
        ? ""
        : " That is so once " + String.join(", ", onSite.loadsOf(moment)) + " is there.";
  }

  /** A stack of which nothing is known to be delivered is looked at once, at the first moment. */
  private boolean stands(Stack stack) {
    List<Bundle> known = known(stack);
    return known.isEmpty() ? moment <= 0 : known.stream().anyMatch(this::isThere);
  }

  private boolean isThere(Bundle bundle) {
    return moment == ALL || onSite.isThere(bundle, moment);
  }

  private boolean isThere(Waiting some) {
    return moment == ALL || (some.from() <= moment && moment <= some.to());
  }

  private List<Bundle> known(Stack stack) {
    return stack.bundleIds().stream()
        .map(task.delivery()::bundle)
        .flatMap(Optional::stream)
        .toList();
  }

  private Standing standing(Stack stack) {
    List<Bundle> bundles = known(stack).stream().filter(this::isThere).toList();
    Optional<BearerRow> bearers =
        bundles.stream().findFirst().flatMap(bottom -> bearers(stack.spot(), bottom));
    return Standing.stacked(stack.spot(), zone(stack.spot()), bundles, bearers);
  }

  /** Beneath the lowest bundle of a stack: laid by a step, or there from the start. */
  private Optional<BearerRow> bearers(Spot spot, Bundle bottom) {
    List<Step> down =
        steps.stream()
            .filter(step -> !step.kind().waits() && step.toId().equals(spot.id()))
            .toList();
    return down.stream()
        .filter(step -> step.bundleId().equals(bottom.id()))
        .findFirst()
        .map(Step::bearers)
        .or(() -> Optional.ofNullable(task.start().bearers().get(bottom.id())))
        .or(() -> down.stream().filter(step -> step.tier() == 1).findFirst().map(Step::bearers));
  }

  Optional<Zone> zone(Spot spot) {
    return task.site().zone(spot.zoneId());
  }

  Task task() {
    return task;
  }

  Plan plan() {
    return plan;
  }

  OnSite onSite() {
    return onSite;
  }

  double setting(Setting setting) {
    return task.settings().get(setting);
  }

  /** Whether a bundle lay on a spot when the plan began. */
  boolean layAt(String bundleId, String spotId) {
    return task.start()
        .stackOf(bundleId)
        .filter(stack -> stack.spot().id().equals(spotId))
        .isPresent();
  }

  /**
   * The layer of its bundle in which a piece lies, 1 = lowest. People who carry a bundle off by
   * hand begin with its top layer, so it lies upside down.
   */
  int layer(Bundle bundle, PackedPiece packed) {
    return task.site().byHand() ? bundle.layers() - packed.layer() + 1 : packed.layer();
  }

  /** What lies on each stack and rack when all steps are done. */
  List<Standing> standings() {
    return standings;
  }

  /** The same, and every bundle that a step sets down on a waiting place. */
  List<Standing> allStandings() {
    return Stream.concat(standings.stream(), waiting()).toList();
  }

  private Stream<Standing> waiting() {
    return waiting.stream().map(Waiting::standing).distinct();
  }

  /** Who waits from its step until the one that lifts it on, or for good. */
  private List<Waiting> allWaiting() {
    Map<String, Integer> liftedOn = new HashMap<>();
    int now = 0;
    for (Step step : steps) {
      now = Math.max(now, momentOf(step));
      if (!step.kind().waits()) {
        liftedOn.put(step.bundleId(), now);
      }
    }
    Stream.Builder<Waiting> all = Stream.builder();
    now = 0;
    for (Step step : steps) {
      now = Math.max(now, momentOf(step));
      if (step.kind().waits()) {
        int from = now;
        int to = Math.max(from, liftedOn.getOrDefault(step.bundleId(), onSite.moments()));
        waiting(step).ifPresent(standing -> all.add(new Waiting(standing, from, to)));
      }
    }
    return all.build().toList();
  }

  /** The first moment at which a step can be done. */
  private int momentOf(Step step) {
    return step.kind().offTruck()
        ? task.delivery().bundle(step.bundleId()).map(onSite::comes).orElse(0)
        : 0;
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
        .filter(waits -> waits.spot().zoneId().equals(zone.id()))
        .forEach(
            waits -> heaviest.merge(waits.id(), waits, (a, b) -> b.massKg() > a.massKg() ? b : a));
    Stream<Standing> lying =
        standings.stream()
            .filter(stack -> stack.spot().zoneId().equals(zone.id()))
            .filter(stack -> !stack.bundles().isEmpty());
    return Stream.concat(lying, heaviest.values().stream()).toList();
  }

  /** Every stack and rack, then every waiting place, that can be drawn. */
  List<Place> places() {
    return Stream.concat(
            soundSpots(stacks.stream().map(Stack::spot)).map(Place::ofStack),
            soundSpots(waitingPlaces()).map(Place::ofWaiting))
        .toList();
  }

  /** One that no step uses is looked at once, at the first moment. */
  private Stream<Spot> waitingPlaces() {
    return plan.waitingPlaces().stream()
        .filter(
            spot ->
                moment == ALL
                    || waiting.stream().anyMatch(some -> some.standing().id().equals(spot.id()))
                    || (moment == 0 && steps.stream().noneMatch(step -> waitsAt(step, spot))));
  }

  private static boolean waitsAt(Step step, Spot spot) {
    return step.kind().waits() && step.toId().equals(spot.id());
  }

  /** The spots of all stacks that can be drawn. */
  List<Spot> stackSpots() {
    return soundSpots(stacks.stream().map(Stack::spot)).toList();
  }

  /** The spot of a stack or the waiting place of an id. */
  Optional<Spot> planned(String id) {
    return plan.spots().stream().filter(spot -> spot.id().equals(id)).findFirst();
  }

  /**
   * The spot of a stack, the waiting place or the spot used before of an id, if it can be drawn.
   */
  Optional<Spot> spot(String id) {
    return planned(id).or(() -> usedBefore(id)).filter(Soundness::sound);
  }

  /** The spot of an id where something lies when the plan begins. */
  Optional<Spot> usedBefore(String id) {
    return task.start().stacks().stream()
        .map(Stack::spot)
        .filter(spot -> spot.id().equals(id))
        .findFirst();
  }

  /** The steps by their numbers. */
  List<Step> steps() {
    return steps;
  }

  /** In the whole plan a spot that is used again is one place. */
  private Stream<Spot> soundSpots(Stream<Spot> spots) {
    Stream<Spot> sound = spots.filter(Soundness::sound);
    return moment == ALL ? sound.distinct() : sound;
  }
}
