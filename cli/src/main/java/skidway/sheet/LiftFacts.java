package skidway.sheet;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import skidway.plan.Plan;
import skidway.plan.Step;

/** What the lifts of a plan tell about the packing list it was made from. */
final class LiftFacts {
  /**
   * @param turn among the lifts off this load
   */
  private record OffTruck(String loadId, int turn, long grams) {}

  private final Map<String, OffTruck> byBundle = new HashMap<>();

  private LiftFacts() {}

  static LiftFacts of(Plan plan) {
    LiftFacts facts = new LiftFacts();
    Map<String, Integer> turns = new HashMap<>();
    for (Step step : plan.steps()) {
      if (step.kind().offTruck()) {
        int turn = turns.merge(step.fromId(), 1, Integer::sum);
        long grams = Math.round(step.massKg() * 1000);
        facts.byBundle.put(step.bundleId(), new OffTruck(step.fromId(), turn, grams));
      }
    }
    return facts;
  }

  boolean sameFor(String bundleId, LiftFacts other) {
    return Objects.equals(byBundle.get(bundleId), other.byBundle.get(bundleId));
  }
}
