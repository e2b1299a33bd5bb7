package skidway.limits;

import skidway.timber.Bundle;

/**
 * How high up a piece is picked, and what that leaves of a person's strength: the height factor of
 * the revised lifting equation, NIOSH 94-110 (rev. 9/2021) p. 9. That a lower factor costs time in
 * proportion is an assumption.
 */
public final class PickHeight {
  private static final double CM_PER_M = 100;

  /** Where picking costs no time, metres. */
  public static final double BEST_M = LiftingEquation.METRIC.easiestHeight() / CM_PER_M;

  /** Above it nothing counts as picked with any strength, metres. */
  public static final double HIGHEST_M = LiftingEquation.METRIC.highestHeight() / CM_PER_M;

  /** Heights are sums; what is less than a micrometre apart is the same height. */
  private static final double MICRONS_PER_M = 1e6;

  private static final double MICRONS_PER_CM = 1e4;

  private PickHeight() {}

  /** 1 at knuckle height, 75 cm; 0 below the feet and above 175 cm. */
  public static double factor(double heightM) {
    return LiftingEquation.METRIC.vertical(Math.round(heightM * MICRONS_PER_M) / MICRONS_PER_CM);
  }

  /**
   * Height of the middle of a layer above what the stack stands on, metres.
   *
   * @param undersideM height of the bundle's underside: its bearers and all that is beneath
   * @param layer of the bundle; 1 is the lowest
   */
  public static double metres(double undersideM, Bundle bundle, int layer) {
    return undersideM + (layer - 0.5) * bundle.heightM() / bundle.layers();
  }
}
