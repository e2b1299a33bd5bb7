package skidway.audit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import skidway.plan.Step;
import skidway.rules.Rule;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;

/** Checks that bundles come off in the order in which they lie on the truck. */
final class OrderRules {
  private final Scene scene;
  private final Ledger ledger;

  OrderRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    List<Bundle> off = new ArrayList<>();
    for (Step step : scene.steps()) {
      if (step.kind().offTruck()) {
        scene
            .task()
            .delivery()
            .bundle(step.bundleId())
            .ifPresent(
                bundle -> {
                  offOrder(step, bundle, off);
                  off.add(bundle);
                });
      }
    }
  }

  private void offOrder(Step step, Bundle bundle, List<Bundle> off) {
    off.stream()
        .filter(earlier -> comesOffBefore(bundle, earlier))
        .findFirst()
        .ifPresent(
            earlier ->
                ledger.broken(
                    Rule.OFF_ORDER,
                    "step " + step.number(),
                    1,
                    0,
                    "Step " + step.number() + " takes " + why(bundle, earlier)));
  }

  private static String why(Bundle bundle, Bundle earlier) {
    return bundle.loadId().equals(earlier.loadId())
        ? bundle.id()
            + " off after "
            + earlier.id()
            + ", but it comes off load "
            + bundle.loadId()
            + " before it."
        : bundle.id()
            + " off after "
            + earlier.id()
            + ", but load "
            + bundle.loadId()
            + " arrives before load "
            + earlier.loadId()
            + ".";
  }

  /** Of loads that arrive together either may come first. */
  private boolean comesOffBefore(Bundle a, Bundle b) {
    return a.loadId().equals(b.loadId())
        ? a.offOrder() < b.offOrder()
        : arrival(a).isBefore(arrival(b));
  }

  private LocalDateTime arrival(Bundle bundle) {
    Delivery delivery = scene.task().delivery();
    return delivery.load(bundle.loadId()).map(Load::arrival).orElse(LocalDateTime.MAX);
  }
}
