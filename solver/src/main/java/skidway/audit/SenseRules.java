package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import skidway.plan.Stack;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.timber.Bundle;

/** Checks that each bundle of the delivery lies in one place, and that it is told where not. */
final class SenseRules {
  private final Scene scene;
  private final Ledger ledger;
  private final Map<String, List<String>> spotsByBundle = new TreeMap<>();

  SenseRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
    for (Stack stack : scene.plan().stacks()) {
      for (String bundleId : stack.bundleIds()) {
        spotsByBundle.computeIfAbsent(bundleId, b -> new ArrayList<>()).add(stack.spot().id());
      }
    }
  }

  void check() {
    once();
    placed();
  }

  private void once() {
    spotsByBundle.forEach(
        (bundleId, spots) -> {
          if (spots.size() > 1) {
            String sentence =
                bundleId + " lies in more than one place: " + String.join(", ", spots);
            ledger.broken(Rule.ONCE, bundleId, spots.size(), 1, sentence + ".");
          }
        });
    for (Unplaced unplaced : scene.plan().unplaced()) {
      List<String> spots = spotsByBundle.getOrDefault(unplaced.bundleId(), List.of());
      if (!spots.isEmpty()) {
        String sentence = unplaced.bundleId() + " is listed as without a spot, but lies in ";
        ledger.broken(
            Rule.ONCE, unplaced.bundleId(), 2, 1, sentence + String.join(", ", spots) + ".");
      }
    }
  }

  private void placed() {
    List<String> told = scene.plan().unplaced().stream().map(Unplaced::bundleId).toList();
    for (Bundle bundle : scene.task().delivery().bundles()) {
      if (!spotsByBundle.containsKey(bundle.id())) {
        String silent = told.contains(bundle.id()) ? "." : ", and the plan does not say why.";
        ledger.broken(Rule.PLACED, bundle.id(), 0, 1, bundle.id() + " has no spot" + silent);
      }
    }
  }
}
