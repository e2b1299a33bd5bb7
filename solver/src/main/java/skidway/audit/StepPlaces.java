package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.audit.plane.Segment;
import skidway.plan.Step;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.TruckStand;
import skidway.timber.Load;

/** Where a step begins, stands and ends, as far as job and plan know these places. */
final class StepPlaces {
  private final Scene scene;
  private final Site site;

  StepPlaces(Scene scene) {
    this.scene = scene;
    this.site = scene.task().site();
  }

  /** Where findings about a step are. */
  static String where(Step step) {
    return "step " + step.number();
  }

  /** To begin a sentence with. */
  static String lift(Step step) {
    return "Step " + step.number() + " (" + step.bundleId() + " to " + step.toId() + ")";
  }

  Optional<Point> stand(Step step) {
    return standOf(step).map(MachineStand::at);
  }

  /** Where the machine stands to put the bundle down. */
  Optional<MachineStand> standOf(Step step) {
    return standOf(step.standId());
  }

  /** Where it stands to pick the bundle up; the same stand unless the step tells another. */
  Optional<MachineStand> pickStandOf(Step step) {
    return drives(step) ? standOf(step.pickStandId()) : standOf(step);
  }

  /** Whether the machine drives from one stand to another with the bundle. */
  static boolean drives(Step step) {
    return !step.kind().offTruck()
        && !step.pickStandId().isEmpty()
        && !step.pickStandId().equals(step.standId());
  }

  private Optional<MachineStand> standOf(String id) {
    return site.machine().stand(id);
  }

  /** The middle of the truck that brings the bundle. */
  Optional<Point> truck(Step step) {
    return scene
        .task()
        .delivery()
        .bundle(step.bundleId())
        .flatMap(bundle -> scene.task().delivery().load(bundle.loadId()))
        .map(Load::truckStandId)
        .flatMap(site::truckStand)
        .map(TruckStand::area)
        .map(area -> area.centre());
  }

  /** The stand from which the bundle of a step that lifts it on was set down to wait. */
  Optional<Point> waitingStand(Step liftOn) {
    return scene.steps().stream()
        .filter(step -> step.kind().waits())
        .filter(step -> step.bundleId().equals(liftOn.bundleId()))
        .findFirst()
        .flatMap(this::stand);
  }

  /** The truck, or where it lies or waits on site. */
  Optional<Point> from(Step step) {
    return step.kind().offTruck() ? truck(step) : spot(step.fromId());
  }

  /** The middle of where it is put down. */
  Optional<Point> to(Step step) {
    return spot(step.toId());
  }

  /**
   * The hook's ways, seen from above: to the stand, with the machine to the next stand if it
   * drives, and from there to where it is put down.
   */
  List<Segment> ways(Step step) {
    List<Segment> ways = new ArrayList<>();
    Optional<Point> pick = pickStandOf(step).map(MachineStand::at);
    Optional<Point> stand = stand(step);
    way(from(step), pick).ifPresent(ways::add);
    if (drives(step)) {
      way(pick, stand).ifPresent(ways::add);
    }
    way(stand, to(step)).ifPresent(ways::add);
    return ways;
  }

  private static Optional<Segment> way(Optional<Point> from, Optional<Point> to) {
    return from.flatMap(a -> to.map(b -> new Segment(a, b)));
  }

  /** How far the machine reaches out: for what it picks up on site to the farther of both ends. */
  Optional<Double> reachM(Step step) {
    Optional<Double> down = stand(step).flatMap(at -> to(step).map(at::distanceTo));
    Optional<Double> up =
        step.kind().offTruck()
            ? Optional.empty()
            : pickStandOf(step).map(MachineStand::at).flatMap(at -> from(step).map(at::distanceTo));
    return down.map(downM -> Math.max(downM, up.orElse(downM)));
  }

  private Optional<Point> spot(String id) {
    return scene.spot(id).map(Spot::footprint).map(footprint -> footprint.centre());
  }
}
