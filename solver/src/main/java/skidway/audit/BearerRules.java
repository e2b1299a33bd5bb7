package skidway.audit;

import skidway.plan.Step;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/** Checks the bearers that each step lays beneath its bundle. */
final class BearerRules {
  private final Scene scene;
  private final Ledger ledger;

  BearerRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    for (Step step : scene.steps()) {
      scene
          .planned(step.toId())
          .filter(spot -> !intoRack(step, spot))
          .flatMap(spot -> scene.task().delivery().bundle(step.bundleId()))
          .ifPresent(bundle -> bearerSpacing(step, bundle));
    }
  }

  private static boolean intoRack(Step step, Spot spot) {
    return !step.kind().waits() && spot.kind() == SpotKind.RACK;
  }

  private void bearerSpacing(Step step, Bundle bundle) {
    BearerRow row = step.bearers();
    double mostM = scene.setting(Setting.BEARER_SPACING);
    String bearers =
        "The bearers that step "
            + step.number()
            + " lays under "
            + bundle.id()
            + " at "
            + step.toId();
    if (new Bearing(bundle, row).canBeLaid()) {
      ledger.most(
          Rule.BEARER_SPACING,
          step.toId(),
          row.spacingM(),
          mostM,
          spacing -> bearers + " lie " + spacing + " apart");
    } else {
      ledger.broken(
          Rule.BEARER_SPACING, step.toId(), row.spacingM(), mostM, bearers + said(bundle, row));
    }
  }

  /** What is wrong with bearers that cannot be laid so. */
  private String said(Bundle bundle, BearerRow row) {
    if (row.count() < 2) {
      return " are fewer than two.";
    }
    double coveredM = (row.count() - 1) * row.spacingM() + 2 * row.endM();
    return " ("
        + (row.count() + " of " + length(row.lengthM()) + ", " + length(row.spacingM()))
        + (" apart, " + length(row.endM()) + " in from the ends) fit a bundle ")
        + (length(coveredM) + " long and at most " + length(row.lengthM()) + " wide; it is ")
        + (length(bundle.lengthM()) + " by " + length(bundle.widthM()) + ".");
  }

  private String length(double metres) {
    return scene.task().figures().length(metres);
  }
}
