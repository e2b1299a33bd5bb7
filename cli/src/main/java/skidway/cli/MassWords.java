package skidway.cli;

import skidway.timber.MassRange;
import skidway.units.Figures;

/** Writes masses that are known only within a range. */
final class MassWords {
  private MassWords() {}

  /** For running text: {@code 1,217 to 1,717 lb, likely 1,480 lb}. */
  static String sentence(MassRange mass, Figures figures) {
    String low = figures.mass(mass.lowKg());
    String high = figures.mass(mass.highKg());
    String likely = figures.mass(mass.likelyKg());
    return low.equals(high)
        ? likely
        : bare(mass.lowKg(), figures) + " to " + high + ", likely " + likely;
  }

  /** Without its unit, for a column beside one that has it. */
  static String bare(double kg, Figures figures) {
    return figures.mass(kg).split(" ", 2)[0];
  }
}
