package skidway.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import skidway.plan.PileTrip;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.Wave;
import skidway.plan.Way;
import skidway.rules.Rule;
import skidway.site.Spot;

/**
 * Checks the machine's trips from bundles to piles: what a load weighs against what the trip says
 * and against the machine's chart, and that nobody carries what is on it.
 */
final class WaveTrips {
  private final Task task;
  private final Plan plan;
  private final Ledger ledger;
  private final ToldMass told;
  private final ToDoubleFunction<List<String>> massKg;

  /**
   * @param massKg what the pieces of these marks weigh at most
   */
  WaveTrips(
      Task task, Plan plan, Ledger ledger, ToldMass told, ToDoubleFunction<List<String>> massKg) {
    this.task = task;
    this.plan = plan;
    this.ledger = ledger;
    this.told = told;
    this.massKg = massKg;
  }

  void check(Wave wave) {
    wave.trips().forEach(trip -> trip(wave, trip));
  }

  private void trip(Wave wave, PileTrip trip) {
    double massKg = this.massKg.applyAsDouble(trip.marks());
    told.atMost(
        Rule.MACHINE_CAPACITY,
        where(wave),
        words(trip) + " is told to weigh at most ",
        trip.massKg(),
        massKg);
    ledger.most(
        Rule.MACHINE_CAPACITY,
        where(wave),
        massKg,
        trip.capacityKg(),
        mass -> words(trip) + " weighs " + mass);
    reach(wave, trip, massKg);
    for (String mark : trip.marks()) {
      boolean byMachine =
          wave.brought().stream().anyMatch(b -> b.mark().equals(mark) && b.way() == Way.BY_MACHINE);
      if (!byMachine) {
        ledger.broken(
            Rule.ONCE, mark, 1, 0, mark + " is on a trip of the machine but is not brought by it.");
      }
    }
  }

  /** The chart's own row for the farther of both ends, whatever the trip says of itself. */
  private void reach(Wave wave, PileTrip trip, double massKg) {
    Map<String, Spot> spots = spots(wave);
    Optional<Double> up =
        reachM(trip.pickStandId(), Optional.ofNullable(spots.get(trip.fromSpotId())));
    Optional<Double> down = reachM(trip.standId(), Optional.ofNullable(spots.get(trip.pileId())));
    if (up.isEmpty() || down.isEmpty()) {
      ledger.broken(
          Rule.KNOWN,
          where(wave),
          1,
          0,
          words(trip) + " names a stand, a stack or a pile that is not there.");
      return;
    }
    double reachM = Math.max(up.get(), down.get());
    double capacityKg =
        ChartRows.at(task.site().machine(), reachM)
            .map(row -> Math.max(0, row.capacityKg() - task.site().machine().riggingKg()))
            .orElse(0.0);
    ledger.most(
        Rule.MACHINE_CAPACITY,
        where(wave),
        massKg,
        capacityKg,
        mass ->
            words(trip) + " weighs " + mass + " at a reach of " + task.figures().length(reachM));
  }

  private Optional<Double> reachM(String standId, Optional<Spot> spot) {
    return task.site()
        .machine()
        .stand(standId)
        .flatMap(stand -> spot.map(s -> stand.at().distanceTo(s.footprint().centre())));
  }

  private Map<String, Spot> spots(Wave wave) {
    Map<String, Spot> spots = new HashMap<>();
    plan.stacks().forEach(stack -> spots.put(stack.spot().id(), stack.spot()));
    wave.piles().forEach(pile -> spots.put(pile.id(), pile.spot()));
    return spots;
  }

  private static String where(Wave wave) {
    return "wave " + wave.number();
  }

  private static String words(PileTrip trip) {
    return "A trip from " + trip.bundleId() + " to " + trip.pileId();
  }
}
