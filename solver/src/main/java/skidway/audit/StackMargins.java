package skidway.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import skidway.plan.Margin;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.rules.Rule;
import skidway.site.Spot;

/**
 * Sorts margins by stack: for each stack, in the plan's order, and each rule the tightest of what
 * was measured on it, between it and another place, or in a step that brings a bundle to it. After
 * them, for each waiting place, how hard a bundle presses there.
 */
final class StackMargins {
  private static final Set<Rule> WHILE_WAITING =
      Collections.unmodifiableSet(EnumSet.of(Rule.ZONE_LOAD, Rule.GROUND_PRESSURE));

  private final List<String> spotIds;
  private final List<String> waitingIds;
  private final Map<String, List<String>> spotsByPlace = new HashMap<>();

  private StackMargins(Scene scene) {
    spotIds = scene.plan().stacks().stream().map(Stack::spot).map(s -> s.id()).distinct().toList();
    waitingIds =
        scene.plan().waitingPlaces().stream()
            .map(Spot::id)
            .filter(id -> !spotIds.contains(id))
            .distinct()
            .toList();
    spotIds.forEach(id -> spotsByPlace.put(id, List.of(id)));
    waitingIds.forEach(id -> spotsByPlace.put(id, List.of(id)));
    for (Step step : scene.steps()) {
      spotsByPlace.putIfAbsent("step " + step.number(), List.of(step.toId()));
    }
    List<String> places = scene.places().stream().map(Place::id).distinct().toList();
    for (String a : places) {
      for (String b : places) {
        spotsByPlace.putIfAbsent(a + ", " + b, List.of(a, b));
      }
    }
  }

  /**
   * Sorts what the ledger kept.
   *
   * @param byPlace the tightest margin of each rule at each place
   * @return the same with a stack's spot as the place
   */
  static List<Margin> of(Scene scene, List<Margin> byPlace) {
    return new StackMargins(scene).sorted(byPlace);
  }

  private List<Margin> sorted(List<Margin> byPlace) {
    Map<String, Map<Rule, Margin>> bySpot = new HashMap<>();
    for (Margin margin : byPlace) {
      for (String spotId : spotsByPlace.getOrDefault(margin.where(), List.of())) {
        bySpot
            .computeIfAbsent(spotId, s -> new TreeMap<>())
            .merge(margin.rule(), at(spotId, margin), Ledger::tighter);
      }
    }
    List<Margin> sorted = new ArrayList<>();
    spotIds.forEach(id -> sorted.addAll(bySpot.getOrDefault(id, Map.of()).values()));
    waitingIds.stream()
        .flatMap(id -> bySpot.getOrDefault(id, Map.of()).values().stream())
        .filter(margin -> WHILE_WAITING.contains(margin.rule()))
        .forEach(sorted::add);
    return sorted;
  }

  private static Margin at(String spotId, Margin m) {
    return new Margin(m.rule(), spotId, m.value(), m.limit(), m.atLeast());
  }
}
