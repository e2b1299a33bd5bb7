package skidway.audit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import skidway.plan.Step;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Grip;
import skidway.site.Lane;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.timber.Bundle;

/** Checks how the machine holds bundles: the pull in its slings, and the width that it travels. */
final class GripRules {
  private final Scene scene;
  private final Ledger ledger;
  private final StepPlaces places;
  private final Machine machine;

  GripRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
    this.places = new StepPlaces(scene);
    this.machine = scene.task().site().machine();
  }

  void check() {
    if (machine.grip() instanceof Grip.Slings slings && !scene.steps().isEmpty()) {
      slings.angleDeg().ifPresent(this::slingAngle);
    }
    for (Step step : scene.steps()) {
      scene.task().delivery().bundle(step.bundleId()).ifPresent(bundle -> check(step, bundle));
    }
  }

  private void check(Step step, Bundle bundle) {
    if (machine.grip() instanceof Grip.Slings slings
        && slings.angleDeg().isPresent()
        && slings.legKg().isPresent()) {
      slingLoad(step, bundle, slings.angleDeg().getAsDouble(), slings.legKg().getAsDouble());
    }
    OptionalDouble loadM = loadWidthM(bundle);
    if (loadM.isPresent()) {
      lanes(step).forEach(lane -> travelWidth(step, loadM.getAsDouble(), lane));
    }
  }

  private void slingAngle(double angleDeg) {
    ledger.least(
        Rule.SLING_ANGLE,
        machine.name(),
        angleDeg,
        scene.setting(Setting.SLING_ANGLE),
        angle -> "The slings of " + machine.name() + " hang at " + angle + " from the horizontal");
  }

  /** Two slings share the load; each pulls up with the sine of its angle. */
  private void slingLoad(Step step, Bundle bundle, double angleDeg, double ratedKg) {
    double eachKg = bundle.mass().highKg() / (2 * Math.sin(Math.toRadians(angleDeg)));
    ledger.most(
        Rule.SLING_LOAD,
        StepPlaces.where(step),
        eachKg,
        ratedKg,
        pull -> StepPlaces.lift(step) + " pulls each sling with " + pull);
  }

  private void travelWidth(Step step, double loadM, Lane lane) {
    double widestM = Math.max(machine.widthM().orElse(0), loadM);
    double neededM =
        Math.max(
            widestM + scene.setting(Setting.TRAVEL_CLEARANCE), scene.setting(Setting.TRAVEL_LEAST));
    ledger.most(
        Rule.TRAVEL_WIDTH,
        StepPlaces.where(step),
        neededM,
        lane.widthM(),
        width -> StepPlaces.lift(step) + " needs lane " + lane.id() + " to be " + width + " wide");
  }

  /** Forks carry a bundle crosswise, slings lengthwise. */
  private OptionalDouble loadWidthM(Bundle bundle) {
    if (machine.grip() instanceof Grip.Unstated) {
      return OptionalDouble.empty();
    }
    boolean crosswise = machine.grip() instanceof Grip.Forks;
    return OptionalDouble.of(crosswise ? bundle.lengthM() : bundle.widthM());
  }

  /** The lanes along which the machine comes to its stands with the bundle. */
  private List<Lane> lanes(Step step) {
    if (!step.kind().offTruck() && !StepPlaces.drives(step)) {
      return List.of();
    }
    return Stream.of(places.pickStandOf(step), places.standOf(step))
        .flatMap(Optional::stream)
        .map(MachineStand::laneId)
        .distinct()
        .flatMap(id -> scene.task().site().lanes().stream().filter(l -> l.id().equals(id)).limit(1))
        .toList();
  }
}
