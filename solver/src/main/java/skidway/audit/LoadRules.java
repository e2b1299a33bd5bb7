package skidway.audit;

import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.timber.Bundle;

/**
 * Checks what a stack, a rack or a bundle that waits weighs: on its spot, and on the floor or
 * ground beneath it.
 */
final class LoadRules {
  /** Standard gravity, m/s² (ISO 80000-3). */
  private static final double GRAVITY = 9.80665;

  private final Scene scene;
  private final Ledger ledger;

  LoadRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    for (Standing standing : scene.allStandings()) {
      if (!standing.bundles().isEmpty()) {
        spotMass(standing);
        zoneLoad(standing);
      }
    }
  }

  private void spotMass(Standing standing) {
    standing
        .spot()
        .massLimitKg()
        .ifPresent(
            limitKg ->
                ledger.most(
                    Rule.SPOT_MASS,
                    standing.id(),
                    standing.massKg(),
                    limitKg,
                    mass -> standing.name() + " weighs " + mass));
  }

  private void zoneLoad(Standing standing) {
    double kpa = standing.massKg() * GRAVITY / 1000 / bearingAreaM2(standing);
    standing
        .zone()
        .ifPresent(
            zone ->
                ledger.most(
                    Rule.ZONE_LOAD,
                    standing.id(),
                    kpa,
                    zone.allowedKpa(),
                    load -> standing.name() + " puts " + load + " on " + zone.id()));
  }

  private double bearingAreaM2(Standing standing) {
    if (standing.rack()) {
      return standing.spot().footprint().areaM2();
    }
    Bundle bottom = standing.bundles().get(0);
    return bottom.lengthM() * (bottom.widthM() + 2 * scene.setting(Setting.BEARER_REACH));
  }
}
