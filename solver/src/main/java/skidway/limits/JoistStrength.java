package skidway.limits;

import skidway.site.JoistDesign;

/**
 * What one joist on one span can bear beside its own floor. By statics of a simple span under an
 * even load, AWC Design Aid 6: w L² / 8 and w L / 2; shear stress in a rectangle is 1.5 times the
 * mean. Nothing here replaces the floor's designer.
 */
public record JoistStrength(double momentNm, double shearN) {
  private static final double PA_PER_KPA = 1000;

  /** What a joist may take from what lies on its floor; nothing if the floor alone is too heavy. */
  public static JoistStrength of(JoistDesign design, double spacingM, double spanM) {
    if (design instanceof JoistDesign.Lumber lumber) {
      JoistStrength dead = underEvenLoad(lumber.deadKpa(), spacingM, spanM);
      return new JoistStrength(
          Math.max(0, lumber.bendingPa() * lumber.sectionModulusM3() - dead.momentNm),
          Math.max(0, lumber.shearPa() * lumber.areaM2() / 1.5 - dead.shearN));
    }
    return underEvenLoad(((JoistDesign.LiveLoad) design).kpa(), spacingM, spanM);
  }

  /** Moment and shear that an even load on the floor makes in a joist. */
  private static JoistStrength underEvenLoad(double kpa, double spacingM, double spanM) {
    double newtonsPerM = kpa * PA_PER_KPA * spacingM;
    return new JoistStrength(newtonsPerM * spanM * spanM / 8, newtonsPerM * spanM / 2);
  }
}
