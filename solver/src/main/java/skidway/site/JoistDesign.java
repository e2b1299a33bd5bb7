package skidway.site;

/** How the strength of joists is told. */
public sealed interface JoistDesign {
  /**
   * By the live load that the floor was designed for: an even load on the whole span, so each joist
   * bears the bending moment and the shear that this load makes.
   */
  record LiveLoad(double kpa) implements JoistDesign {}

  /**
   * By the timber itself: adjusted stresses and the section's properties.
   *
   * @param name species, grade and size, as written
   * @param bendingPa adjusted bending stress F'b
   * @param shearPa shear stress parallel to grain Fv
   * @param deadKpa the floor's own weight, which the joist bears already
   * @param source where the stresses come from, and how far they are to be trusted
   */
  record Lumber(
      String name,
      double bendingPa,
      double shearPa,
      double sectionModulusM3,
      double areaM2,
      double deadKpa,
      String source)
      implements JoistDesign {}
}
