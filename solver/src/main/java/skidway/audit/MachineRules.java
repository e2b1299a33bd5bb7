package skidway.audit;

import java.util.List;
import java.util.Optional;
import skidway.plan.Step;
import skidway.rules.Rule;
import skidway.site.ChartRow;
import skidway.site.Grip;
import skidway.site.Machine;
import skidway.timber.Bundle;

/**
 * Checks each lift against the machine's load chart, and that the step tells the crew the reach,
 * mass and capacity that the audit finds.
 */
final class MachineRules {
  /**
   * Steps may be written with rounded figures: to this many metres; masses as in {@link ToldMass}.
   */
  private static final double TOLD_REACH_M = 0.05;

  private final Scene scene;
  private final Ledger ledger;
  private final ToldMass told;
  private final StepPlaces places;
  private final Machine machine;
  private final List<ChartRow> chart;

  MachineRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
    this.told = new ToldMass(ledger, scene.task().figures());
    this.places = new StepPlaces(scene);
    this.machine = scene.task().site().machine();
    this.chart = machine.chart();
  }

  void check() {
    for (Step step : scene.steps()) {
      Optional<Bundle> bundle = scene.task().delivery().bundle(step.bundleId());
      Optional<Double> reachM = places.reachM(step);
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
        StepPlaces.where(step),
        reachM,
        mostM,
        reach -> StepPlaces.lift(step) + " reaches out " + reach);
    if (!(Math.abs(step.reachM() - reachM) <= TOLD_REACH_M)) {
      ledger.broken(
          Rule.MACHINE_REACH,
          StepPlaces.where(step),
          step.reachM(),
          reachM,
          StepPlaces.lift(step)
              + " is told to reach "
              + length(step.reachM())
              + ", the audit finds "
              + length(reachM)
              + ".");
    }
  }

  private void machineCapacity(Step step, Bundle bundle, double reachM) {
    double massKg = bundle.mass().highKg();
    if (!(Math.abs(step.massKg() - massKg) <= ToldMass.ROUNDING_KG)) {
      told(step, " is told to weigh ", step.massKg(), massKg);
    }
    ChartRows.at(machine, reachM)
        .ifPresent(
            row -> machineCapacity(step, massKg, reachM, row, capacityKg(row, bundle.widthM())));
  }

  /** The chart's capacity, less in proportion for a bundle deep on forks, less the rigging. */
  private double capacityKg(ChartRow row, double bundleWidthM) {
    double middleM = bundleWidthM / 2;
    double centreM =
        machine.grip() instanceof Grip.Forks forks ? forks.loadCentreM().orElse(middleM) : middleM;
    double grossKg = middleM > centreM ? row.capacityKg() * centreM / middleM : row.capacityKg();
    return Math.max(0, grossKg - machine.riggingKg());
  }

  private void machineCapacity(
      Step step, double massKg, double reachM, ChartRow row, double capacityKg) {
    ledger.most(
        Rule.MACHINE_CAPACITY,
        StepPlaces.where(step),
        massKg,
        capacityKg,
        mass ->
            StepPlaces.lift(step)
                + (" weighs " + mass + " at a reach of " + length(reachM))
                + (", chart row " + length(row.reachM())));
    if (!(step.capacityKg() <= capacityKg + ToldMass.ROUNDING_KG)) {
      told(step, " is told to have a capacity of ", step.capacityKg(), capacityKg);
    }
  }

  private void told(Step step, String words, double toldKg, double foundKg) {
    told.broken(
        Rule.MACHINE_CAPACITY,
        StepPlaces.where(step),
        StepPlaces.lift(step) + words,
        toldKg,
        foundKg);
  }

  private String length(double metres) {
    return scene.task().figures().length(metres);
  }
}
