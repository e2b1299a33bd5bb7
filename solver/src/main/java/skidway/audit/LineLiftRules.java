package skidway.audit;

import skidway.audit.plane.Segment;
import skidway.plan.Step;
import skidway.rules.Rule;
import skidway.site.OverheadLine;
import skidway.timber.Bundle;

/**
 * Checks how near each lift comes to overhead lines, seen from above: the hook's way, and half the
 * bundle beyond it, for a load may turn.
 */
final class LineLiftRules {
  private final Scene scene;
  private final Ledger ledger;
  private final StepPlaces places;

  LineLiftRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
    this.places = new StepPlaces(scene);
  }

  void check() {
    LineClearance clearance = new LineClearance(scene);
    for (OverheadLine line : scene.task().site().overheadLines()) {
      clearance.metres(line).ifPresent(clearM -> check(line, clearM));
    }
  }

  private void check(OverheadLine line, double clearM) {
    for (Step step : scene.steps()) {
      scene
          .task()
          .delivery()
          .bundle(step.bundleId())
          .ifPresent(bundle -> lineLift(step, bundle, line, clearM));
    }
  }

  private void lineLift(Step step, Bundle bundle, OverheadLine line, double clearM) {
    Segment wire = new Segment(line.from(), line.to());
    places.ways(step).stream()
        .mapToDouble(wire::distanceTo)
        .min()
        .ifPresent(
            wayM -> {
              double nearestM = wayM - Math.hypot(bundle.lengthM(), bundle.widthM()) / 2;
              String under = " may swing under overhead line " + line.id();
              ledger.least(
                  Rule.LINE_LIFT,
                  StepPlaces.where(step),
                  nearestM,
                  clearM,
                  nearest ->
                      StepPlaces.lift(step)
                          + (nearestM > 0
                              ? " may come to " + nearest + " of overhead line " + line.id()
                              : under));
            });
  }
}
