package skidway.audit;

import java.util.List;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Yard;
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
        stackSlender(stack);
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
    ledger.most(
        Rule.STACK_HEIGHT,
        stack.id(),
        stack.heightM(scene.setting(Setting.BEARER_HEIGHT)),
        Math.min(scene.setting(Setting.STACK_HEIGHT), scene.setting(Setting.HAND_PILE_HEIGHT)),
        height -> stack.name() + " is " + height + " high with its bearers");
  }

  /** From the top down: what lies on a bundle, itself included, over the narrower of its sides. */
  private void stackSlender(Standing stack) {
    double mostTimes = 1 / (1 / scene.setting(Setting.HEIGHT_TO_WIDTH) + slope(stack));
    double heightM = 0;
    for (int tier = stack.bundles().size() - 1; tier >= 0; tier--) {
      Bundle bundle = stack.bundles().get(tier);
      heightM += bundle.heightM();
      ledger.most(
          Rule.STACK_SLENDER,
          stack.id(),
          heightM / Math.min(bundle.lengthM(), bundle.widthM()),
          mostTimes,
          times ->
              stack.name()
                  + (" is " + times + " times as high from the underside of " + bundle.id())
                  + (" as " + bundle.id() + " is wide"));
      heightM += scene.setting(Setting.BEARER_HEIGHT);
    }
  }

  private static double slope(Standing stack) {
    return stack.zone().orElse(null) instanceof Yard yard ? yard.slope().orElse(0) : 0;
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
