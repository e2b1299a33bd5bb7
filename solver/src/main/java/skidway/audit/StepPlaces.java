package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.audit.plane.Segment;
import skidway.plan.Step;
import skidway.plan.StepKind;
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

  Optional<MachineStand> standOf(Step step) {
    return site.machine().stands().stream()
        .filter(stand -> stand.id().equals(step.standId()))
        .findFirst();
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
        .filter(step -> step.kind() == StepKind.SET_DOWN)
        .filter(step -> step.bundleId().equals(liftOn.bundleId()))
        .findFirst()
        .flatMap(this::stand);
  }

  /** The truck, or the waiting place when it is lifted on. */
  Optional<Point> from(Step step) {
    return step.kind() == StepKind.LIFT_ON ? spot(step.fromId()) : truck(step);
  }

  /** The middle of where it is put down. */
  Optional<Point> to(Step step) {
    return spot(step.toId());
  }

  /** The hook's ways, seen from above: to the stand, and from there to where it is put down. */
  List<Segment> ways(Step step) {
    List<Segment> ways = new ArrayList<>();
    stand(step)
        .ifPresent(
            at -> {
              from(step).ifPresent(start -> ways.add(new Segment(start, at)));
              to(step).ifPresent(end -> ways.add(new Segment(at, end)));
            });
    return ways;
  }

  private Optional<Point> spot(String id) {
    return scene.spot(id).map(Spot::footprint).map(footprint -> footprint.centre());
  }
}
