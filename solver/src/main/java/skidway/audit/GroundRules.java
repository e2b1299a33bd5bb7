package skidway.audit;

import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Yard;
import skidway.units.Figures;

/** Checks what stands on a yard: how steep it is, how hard bearers press, how high they lift. */
final class GroundRules {
  /** Bearers may be written with rounded lengths. */
  private static final double TOLERANCE_M = 0.05;

  private final Scene scene;
  private final Ledger ledger;
  private final Figures figures;

  GroundRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
    this.figures = scene.task().figures();
  }

  void check() {
    for (Standing standing : scene.allStandings()) {
      standing
          .zone()
          .filter(Yard.class::isInstance)
          .map(Yard.class::cast)
          .filter(yard -> !standing.bundles().isEmpty())
          .ifPresent(yard -> check(standing, yard));
    }
  }

  private void check(Standing standing, Yard yard) {
    yardSlope(standing, yard);
    groundClearance(standing, yard);
    if (standing.rack()) {
      railPressure(standing, yard);
    } else {
      Bearing bearing = Bearing.of(standing);
      bearerPressure(standing, yard, bearing);
      bearersProud(standing, yard, bearing);
    }
  }

  private void yardSlope(Standing standing, Yard yard) {
    yard.slope()
        .ifPresent(
            slope ->
                ledger.most(
                    Rule.YARD_SLOPE,
                    standing.id(),
                    slope,
                    scene.setting(Setting.YARD_SLOPE),
                    fall -> standing.name() + " stands on " + yard.id() + ", which falls " + fall));
  }

  private void groundClearance(Standing standing, Yard yard) {
    ledger.least(
        Rule.GROUND_CLEARANCE,
        standing.id(),
        scene.setting(Setting.BEARER_HEIGHT),
        scene.setting(Setting.GROUND_CLEARANCE),
        height -> standing.name() + " lies " + height + " above " + yard.id());
  }

  private void bearerPressure(Standing standing, Yard yard, Bearing bearing) {
    double areaM2 = scene.setting(Setting.BEARER_WIDTH) * bearing.row().lengthM();
    String bearer =
        standing.bearers().isPresent()
            ? "bearer"
            : "bearer; nobody told of its bearers, so two are taken to lie at its very ends";
    groundPressure(
        standing, yard, Gravity.kpa(standing.massKg() * bearing.worstShare(), areaM2), bearer);
  }

  /** A rack stands on two rails, as long as it is. */
  private void railPressure(Standing rack, Yard yard) {
    double lengthM = rack.spot().footprint().lengthM();
    double areaM2 = 2 * scene.setting(Setting.BEARER_WIDTH) * lengthM;
    groundPressure(rack, yard, Gravity.kpa(rack.massKg(), areaM2), "rail");
  }

  private void groundPressure(Standing standing, Yard yard, double kpa, String timber) {
    ledger.most(
        Rule.GROUND_PRESSURE,
        standing.id(),
        kpa,
        yard.allowedKpa(),
        load -> standing.name() + " presses " + load + " on " + yard.id() + " under a " + timber);
  }

  /** A bearer that stands out too far bends and presses no more at its ends. */
  private void bearersProud(Standing standing, Yard yard, Bearing bearing) {
    double widthM = bearing.bundle().widthM();
    double mostM = widthM + 2 * proudM();
    double lengthM = bearing.row().lengthM();
    if (lengthM > mostM + TOLERANCE_M + 1e-9) {
      double kpa =
          Gravity.kpa(
              standing.massKg() * bearing.worstShare(),
              scene.setting(Setting.BEARER_WIDTH) * mostM);
      ledger.broken(
          Rule.GROUND_PRESSURE,
          standing.id(),
          kpa,
          yard.allowedKpa(),
          standing.name()
              + (" lies on bearers " + figures.length(lengthM) + " long")
              + (", of which no more than " + figures.length(mostM) + " press on the ground."));
    }
  }

  /** Bearers of two stacks that keep the gap never lie on the same ground. */
  private double proudM() {
    return Math.min(scene.setting(Setting.BEARER_PROUD), scene.setting(Setting.STACK_GAP) / 2);
  }
}
