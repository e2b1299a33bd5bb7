package skidway.audit;

import java.util.List;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.timber.Bundle;

/**
 * Checks how bundles lie on each other: size, height, support. A rack has no tiers; a bundle that
 * waits is a stack of one.
 */
final class StackRules {
  private final Scene scene;
  private final Ledger ledger;

  StackRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    for (Standing stack : scene.allStandings()) {
      if (!stack.rack()) {
        fitsSpot(stack);
        stackHeight(stack);
        stackTiers(stack);
        tierSupport(stack);
      }
    }
  }

  private void fitsSpot(Standing stack) {
    for (Bundle b : stack.bundles()) {
      ledger.most(
          Rule.FITS_SPOT,
          stack.id(),
          b.lengthM(),
          stack.spot().footprint().lengthM(),
          length -> b.id() + " is " + length + " long, too long for spot " + stack.id());
      ledger.most(
          Rule.FITS_SPOT,
          stack.id(),
          b.widthM(),
          stack.spot().footprint().widthM(),
          width -> b.id() + " is " + width + " wide, too wide for spot " + stack.id());
    }
  }

  private void stackHeight(Standing stack) {
    double bearerM = scene.setting(Setting.BEARER_HEIGHT);
    double heightM = stack.bundles().stream().mapToDouble(b -> b.heightM() + bearerM).sum();
    ledger.most(
        Rule.STACK_HEIGHT,
        stack.id(),
        heightM,
        scene.setting(Setting.STACK_HEIGHT),
        height -> stack.name() + " is " + height + " high with its bearers");
  }

  private void stackTiers(Standing stack) {
    ledger.most(
        Rule.STACK_TIERS,
        stack.id(),
        stack.bundles().size(),
        scene.setting(Setting.STACK_TIERS),
        tiers -> stack.name() + " has " + tiers + " tiers");
  }

  private void tierSupport(Standing stack) {
    List<Bundle> bundles = stack.bundles();
    for (int upper = 1; upper < bundles.size(); upper++) {
      for (int lower = 0; lower < upper; lower++) {
        tierSupport(stack, bundles.get(lower), bundles.get(upper));
      }
    }
  }

  private void tierSupport(Standing stack, Bundle lower, Bundle upper) {
    ledger.most(
        Rule.TIER_SUPPORT,
        stack.id(),
        (upper.lengthM() - lower.lengthM()) / 2,
        scene.setting(Setting.END_OVERHANG),
        out -> upper.id() + " sticks out " + out + " beyond " + lower.id() + " beneath it");
    ledger.most(
        Rule.TIER_SUPPORT,
        stack.id(),
        (upper.widthM() - lower.widthM()) / 2,
        scene.setting(Setting.SIDE_OVERHANG),
        out -> upper.id() + " sticks out " + out + " to the side of " + lower.id() + " beneath it");
  }
}
