package skidway.audit;

import java.util.List;
import java.util.Optional;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.rules.Rule;
import skidway.site.ChartRow;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.Bundle;

/**
 * Checks each lift against the machine's load chart, and that the step tells the crew the reach,
 * mass and capacity that the audit finds.
 */
final class MachineRules {
  /** Steps may be written with rounded figures: to this many metres, and to this many kilograms. */
  private static final double TOLD_REACH_M = 0.05;

  private static final double TOLD_MASS_KG = 1;

  private final Scene scene;
  private final Ledger ledger;
  private final List<ChartRow> chart;

  MachineRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
    this.chart = scene.task().site().machine().chart();
  }

  void check() {
    for (Step step : scene.steps()) {
      Optional<Bundle> bundle = scene.task().delivery().bundle(step.bundleId());
      Optional<Double> reachM = reachM(step);
      reachM.ifPresent(reach -> machineReach(step, reach));
      if (bundle.isPresent() && reachM.isPresent()) {
        machineCapacity(step, bundle.get(), reachM.get());
      }
    }
  }

  private void machineReach(Step step, double reachM) {
    double mostM = chart.get(chart.size() - 1).reachM();
    ledger.most(
        Rule.MACHINE_REACH,
        where(step),
        reachM,
        mostM,
        reach -> lift(step) + " reaches out " + reach);
    if (!(Math.abs(step.reachM() - reachM) <= TOLD_REACH_M)) {
      ledger.broken(
          Rule.MACHINE_REACH,
          where(step),
          step.reachM(),
          reachM,
          lift(step)
              + " is told to reach "
              + length(step.reachM())
              + ", the audit finds "
              + length(reachM)
              + ".");
    }
  }

  private void machineCapacity(Step step, Bundle bundle, double reachM) {
    double massKg = bundle.massKg();
    if (!(Math.abs(step.massKg() - massKg) <= TOLD_MASS_KG)) {
      told(step, " is told to weigh ", step.massKg(), massKg);
    }
    chart.stream()
        .filter(row -> row.reachM() >= reachM - Ledger.LENGTH_TOLERANCE_M)
        .findFirst()
        .ifPresent(row -> machineCapacity(step, massKg, reachM, row));
  }

  private void machineCapacity(Step step, double massKg, double reachM, ChartRow row) {
    ledger.most(
        Rule.MACHINE_CAPACITY,
        where(step),
        massKg,
        row.capacityKg(),
        mass ->
            lift(step)
                + (" weighs " + mass + " at a reach of " + length(reachM))
                + (", chart row " + length(row.reachM())));
    if (!(step.capacityKg() <= row.capacityKg() + TOLD_MASS_KG)) {
      told(step, " is told to have a capacity of ", step.capacityKg(), row.capacityKg());
    }
  }

  private void told(Step step, String words, double toldKg, double foundKg) {
    ledger.broken(
        Rule.MACHINE_CAPACITY,
        where(step),
        toldKg,
        foundKg,
        lift(step)
            + words
            + scene.task().figures().mass(toldKg)
            + ", the audit finds "
            + scene.task().figures().mass(foundKg)
            + ".");
  }

  /** From the stand to the middle of the place; lifting on, to the farther of both places. */
  private Optional<Double> reachM(Step step) {
    Optional<Point> stand =
        scene.task().site().machine().stands().stream()
            .filter(s -> s.id().equals(step.standId()))
            .map(MachineStand::at)
            .findFirst();
    Optional<Point> to = scene.spot(step.toId()).map(MachineRules::centre);
    Optional<Point> from =
        step.kind() == StepKind.LIFT_ON
            ? scene.spot(step.fromId()).map(MachineRules::centre)
            : Optional.empty();
    return stand.flatMap(
        at ->
            to.map(
                end ->
                    Math.max(
                        at.distanceTo(end), from.map(at::distanceTo).orElse(at.distanceTo(end)))));
  }

  private static Point centre(Spot spot) {
    return spot.footprint().centre();
  }

  private String length(double metres) {
    return scene.task().figures().length(metres);
  }

  private static String where(Step step) {
    return "step " + step.number();
  }

  private static String lift(Step step) {
    return "Step " + step.number() + " (" + step.bundleId() + " to " + step.toId() + ")";
  }
}
