package skidway.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.plan.Stack;
import skidway.plan.StepKind;
import skidway.rules.Setting;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/** Counts the crew time of the machine's lifts and of new tags, person-seconds. */
final class Handling {
  private final Scene scene;
  private final StepPlaces places;
  private final Map<String, Integer> pullIndex = new HashMap<>();

  Handling(Scene scene, PullOrder order) {
    this.scene = scene;
    this.places = new StepPlaces(scene);
    for (Placement placement : order.placements()) {
      pullIndex.put(placement.piece().mark(), pullIndex.size());
    }
  }

  /** When a piece is pulled, if it has a place on a wall. */
  OptionalInt pullIndex(Piece piece) {
    Integer index = pullIndex.get(piece.mark());
    return index == null ? OptionalInt.empty() : OptionalInt.of(index);
  }

  /** Off the truck, onto a stack or down to wait. */
  double machineS() {
    if (scene.task().site().byHand()) {
      return 0;
    }
    return scene.steps().stream()
        .filter(step -> step.kind().offTruck())
        .mapToDouble(step -> liftS(places.truck(step), places.stand(step)))
        .sum();
  }

  /** From a waiting place onto a stack, what came off a truck before. */
  double setDownS() {
    return scene.steps().stream()
        .filter(step -> step.kind() == StepKind.LIFT_ON && !lay(step.bundleId()))
        .mapToDouble(step -> liftS(places.waitingStand(step), places.stand(step)))
        .sum();
  }

  /** Lifting what lay there when the plan began, and tags for what comes to lie elsewhere. */
  double moveS() {
    double liftsS =
        scene.steps().stream()
            .filter(step -> !step.kind().offTruck() && lay(step.bundleId()))
            .mapToDouble(
                step -> liftS(places.pickStandOf(step).map(MachineStand::at), places.stand(step)))
            .sum();
    long taggedAnew =
        scene.standings().stream()
            .flatMap(standing -> standing.bundles().stream().filter(b -> liesAnew(b, standing)))
            .count();
    return liftsS + taggedAnew * scene.setting(Setting.RETAG);
  }

  private boolean lay(String bundleId) {
    return scene.task().start().lies(bundleId);
  }

  /** Whether a bundle that lay somewhere comes to another spot or tier. */
  private boolean liesAnew(Bundle bundle, Standing standing) {
    if (!lay(bundle.id()) || !scene.layAt(bundle.id(), standing.id())) {
      return lay(bundle.id());
    }
    List<String> before =
        scene.task().start().stackOf(bundle.id()).map(Stack::bundleIds).orElse(List.of());
    int tierBefore = before.indexOf(bundle.id());
    return !standing.rack() && tierBefore != standing.bundles().indexOf(bundle);
  }

  /** One lift, with a drive from where the machine picks up to where it puts down, and back. */
  double liftS(Optional<Point> from, Optional<Point> to) {
    double travelM = from.flatMap(a -> to.map(a::distanceTo)).orElse(0.0);
    return (scene.setting(Setting.MACHINE_LIFT)
            + 2 * travelM / scene.setting(Setting.MACHINE_SPEED))
        * scene.setting(Setting.MACHINE_CREW);
  }
}
