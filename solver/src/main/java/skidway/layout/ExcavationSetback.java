package skidway.layout;

import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.KeepClear;

/** How far stacks stay away from an excavation: its margin, the setback, its depth where known. */
public final class ExcavationSetback {
  private ExcavationSetback() {}

  /** Metres, whichever of the three is most. */
  public static double metres(KeepClear excavation, Settings settings) {
    double forDepthM = settings.get(Setting.EXCAVATION_DEPTH_SHARE) * excavation.depthM().orElse(0);
    double leastM = Math.max(excavation.marginM(), settings.get(Setting.EXCAVATION_SETBACK));
    return Math.max(leastM, forDepthM);
  }
}
