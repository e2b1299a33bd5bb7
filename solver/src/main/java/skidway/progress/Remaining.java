package skidway.progress;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import skidway.erection.HoldPoint;
import skidway.erection.Placement;
import skidway.erection.Precedence;
import skidway.erection.PullOrder;
import skidway.erection.WallReach;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Wall;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/**
 * What is left to do of a job: the pieces not yet in the walls, the walls as high as they stand,
 * the loads when they are expected now, and the stacks as they lie.
 *
 * <p>A bundle of which pieces were pulled has cut bands and is not lifted any more; neither is one
 * whose pieces stand in a rack. What is missing is not there; what is damaged lies where it lies,
 * but the walls wait for it.
 */
public final class Remaining {
  private final Task task;
  private final List<Plan> history;
  private final Progress progress;

  /** Of the whole building, laid or not. */
  private final Precedence precedence;

  private Remaining(Task task, List<Plan> history, Progress progress) {
    this.task = task;
    this.history = history;
    this.progress = progress;
    this.precedence =
        Precedence.of(task.site(), PullOrder.of(task.site(), task.delivery().pieces()));
  }

  /**
   * The question that is left.
   *
   * @param task the whole job
   * @param history the revisions so far, oldest first
   * @param locked bundles that the site lead wants to stay where they lie
   */
  public static Task of(Task task, List<Plan> history, Progress progress, Set<String> locked) {
    Remaining remaining = new Remaining(task, List.copyOf(history), progress);
    HoldPoint hold = remaining.hold();
    Set<String> held =
        Stream.concat(hold.waiting().stream(), hold.missing().stream())
            .map(placement -> placement.piece().mark())
            .collect(Collectors.toSet());
    return new Task(
        task.jobName(),
        remaining.site(),
        remaining.delivery(),
        task.settings(),
        task.schedule().from(remaining.now()),
        task.figures(),
        remaining.start(locked, held));
  }

  /** How far the crew can build before what is missing or late is there. */
  public static HoldPoint hold(Task task, Progress progress) {
    return new Remaining(task, List.of(), progress).hold();
  }

  /** Work goes on when the last thing happened that is recorded, and not before it begins. */
  private LocalDateTime now() {
    return progress.events().stream()
        .map(Event::at)
        .filter(task.schedule().begins()::isBefore)
        .max(LocalDateTime::compareTo)
        .orElse(task.schedule().begins());
  }

  private HoldPoint hold() {
    Set<String> present = new HashSet<>();
    for (Bundle bundle : task.delivery().bundles()) {
      boolean late = !progress.arrived().containsKey(bundle.loadId()) && isLate(bundle.loadId());
      if (!late) {
        bundle.pieces().forEach(piece -> present.add(piece.mark()));
      }
    }
    present.removeAll(progress.withheld());
    return HoldPoint.of(precedence, progress.pulled(), present);
  }

  private boolean isLate(String loadId) {
    return progress.expected(loadId).isAfter(task.delivery().load(loadId).orElseThrow().arrival());
  }

  /** The walls as high as their whole courses stand. */
  private Site site() {
    Site site = task.site();
    Map<String, Double> topM = new HashMap<>();
    for (WallReach reach : reached()) {
      placements().stream()
          .filter(p -> p.wall().id().equals(reach.wall().id()))
          .filter(p -> p.piece().course() == reach.course())
          .mapToDouble(Placement::topM)
          .min()
          .ifPresent(top -> topM.put(reach.wall().id(), top));
    }
    List<Wall> walls =
        site.walls().stream()
            .map(w -> w.standing(Math.max(w.builtM(), topM.getOrDefault(w.id(), 0.0))))
            .toList();
    return site.withWalls(walls);
  }

  private List<WallReach> reached() {
    return HoldPoint.of(precedence, progress.pulled(), Set.of()).wallsAsPlanned();
  }

  private Delivery delivery() {
    Map<String, Double> fromM = new HashMap<>();
    placements().forEach(p -> fromM.put(p.piece().mark(), p.fromM()));
    List<Load> loads =
        task.delivery().loads().stream()
            .map(load -> new Load(load.id(), when(load), load.truckStandId()))
            .toList();
    List<Bundle> bundles = new ArrayList<>();
    for (Bundle bundle : task.delivery().bundles()) {
      List<PackedPiece> left =
          bundle.packed().stream()
              .filter(packed -> isLeft(packed.piece().mark()))
              .map(packed -> new PackedPiece(placed(packed.piece(), fromM), packed.layer()))
              .toList();
      if (!left.isEmpty() && !progress.missing().contains(bundle.id())) {
        bundles.add(with(bundle, left));
      }
    }
    return new Delivery(loads, bundles);
  }

  private LocalDateTime when(Load load) {
    LocalDateTime here = progress.arrived().get(load.id());
    return here == null ? progress.expected(load.id()) : here;
  }

  private boolean isLeft(String mark) {
    return !progress.pulled().contains(mark) && !progress.missing().contains(mark);
  }

  /** A piece keeps its place on the wall when those to its left are laid and gone. */
  private static Piece placed(Piece piece, Map<String, Double> fromM) {
    return new Piece(
        piece.mark(),
        piece.wallId(),
        piece.course(),
        piece.position(),
        OptionalDouble.of(fromM.getOrDefault(piece.mark(), 0.0)),
        piece.lengthM(),
        piece.section(),
        piece.species(),
        piece.moisture(),
        piece.weighedKg());
  }

  /** A weighed bundle weighs its share of what it weighed, by the computed mass of its pieces. */
  private static Bundle with(Bundle bundle, List<PackedPiece> left) {
    double share = likelyKg(left) / likelyKg(bundle.packed());
    OptionalDouble weighedKg =
        bundle.weighedKg().isPresent()
            ? OptionalDouble.of(bundle.weighedKg().getAsDouble() * share)
            : OptionalDouble.empty();
    return new Bundle(
        bundle.id(),
        bundle.loadId(),
        bundle.offOrder(),
        bundle.lengthM(),
        bundle.widthM(),
        bundle.heightM(),
        weighedKg,
        left);
  }

  private static double likelyKg(List<PackedPiece> packed) {
    return packed.stream().mapToDouble(p -> p.piece().mass().likelyKg()).sum();
  }

  private Start start(Set<String> locked, Set<String> held) {
    List<Stack> stacks = new ArrayList<>();
    Map<String, BearerRow> bearers = new LinkedHashMap<>();
    Set<String> fixed = new HashSet<>(locked);
    progress
        .lying()
        .forEach(
            (spotId, bundleIds) -> {
              Spot spot = progress.spots().get(spotId);
              stacks.add(new Stack(spot, bundleIds));
              bearersUnder(bundleIds.get(0), spotId)
                  .ifPresent(row -> bearers.put(bundleIds.get(0), row));
              bundleIds.stream()
                  .filter(id -> spot.kind() == SpotKind.RACK || isOpened(id))
                  .forEach(fixed::add);
            });
    return new Start(stacks, bearers, marked(), fixed, intended(), held);
  }

  private boolean isOpened(String bundleId) {
    return task.delivery().bundle(bundleId).orElseThrow().pieces().stream()
        .anyMatch(piece -> progress.pulled().contains(piece.mark()));
  }

  /** What the newest revision that laid bearers for this bundle there laid. */
  private Optional<BearerRow> bearersUnder(String bundleId, String spotId) {
    return newestFirst().stream()
        .flatMap(plan -> plan.steps().stream())
        .filter(step -> step.bundleId().equals(bundleId) && step.toId().equals(spotId))
        .filter(step -> !step.kind().waits() && step.tier() == 1)
        .findFirst()
        .map(Step::bearers);
  }

  /** All spots of all revisions; where one code stands for several, the newest. */
  private List<Spot> marked() {
    Map<String, Spot> byId = new LinkedHashMap<>();
    for (Plan plan : newestFirst()) {
      plan.spots().forEach(spot -> byId.putIfAbsent(spot.id(), spot));
    }
    return List.copyOf(byId.values());
  }

  private Map<String, String> intended() {
    Map<String, String> intended = new HashMap<>();
    newestFirst().stream()
        .limit(1)
        .flatMap(plan -> plan.stacks().stream())
        .forEach(stack -> stack.bundleIds().forEach(id -> intended.put(id, stack.spot().id())));
    return intended;
  }

  private List<Plan> newestFirst() {
    List<Plan> plans = new ArrayList<>(history);
    Collections.reverse(plans);
    return plans;
  }

  private List<Placement> placements() {
    return precedence.order().placements();
  }
}
