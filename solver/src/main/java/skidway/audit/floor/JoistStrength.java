package skidway.audit.floor;

import skidway.site.JoistDesign;
import skidway.site.Joists;

/**
 * What one joist may get from stacks on one span.
 *
 * @param momentNm bending moment
 * @param shearN reaction at either end
 */
public record JoistStrength(double momentNm, double shearN) {
  private static final double PA_PER_KPA = 1000;

  /** Shear stress in the middle of a solid rectangle over the mean one. */
  private static final double RECTANGLE = 1.5;

  /** Never below nothing: a joist that its own floor is too much for has nothing left to give. */
  public static JoistStrength of(Joists joists, double spanM) {
    if (joists.design() instanceof JoistDesign.LiveLoad live) {
      return evenly(live.kpa(), joists.spacingM(), spanM);
    }
    JoistDesign.Lumber lumber = (JoistDesign.Lumber) joists.design();
    JoistStrength floor = evenly(lumber.deadKpa(), joists.spacingM(), spanM);
    return new JoistStrength(
        Math.max(0, lumber.bendingPa() * lumber.sectionModulusM3() - floor.momentNm()),
        Math.max(0, lumber.shearPa() * lumber.areaM2() / RECTANGLE - floor.shearN()));
  }

  /** What an even load on the whole floor makes: w L² / 8 and w L / 2. */
  private static JoistStrength evenly(double kpa, double spacingM, double spanM) {
    double newtonsPerM = kpa * PA_PER_KPA * spacingM;
    return new JoistStrength(newtonsPerM * spanM * spanM / 8, newtonsPerM * spanM / 2);
  }
}
