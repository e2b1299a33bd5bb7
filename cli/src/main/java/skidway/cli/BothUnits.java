package skidway.cli;

import skidway.timber.Bundle;
import skidway.timber.Section;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/** Writes figures in metric and US units, for a reader whose units are not the job's. */
final class BothUnits {
  private static final Figures METRIC = new Figures(UnitSystem.METRIC);
  private static final Figures US = new Figures(UnitSystem.US);

  private BothUnits() {}

  static String length(double metres) {
    return METRIC.length(metres) + " (" + US.length(metres) + ")";
  }

  static String mass(double kg) {
    return METRIC.mass(kg) + " (" + US.mass(kg) + ")";
  }

  static String section(Section section) {
    return section(METRIC, section) + " (" + section(US, section) + ")";
  }

  private static String section(Figures figures, Section section) {
    return figures.length(section.widthM()) + " x " + figures.length(section.heightM());
  }

  static String size(Bundle b) {
    return size(METRIC, b) + " (" + size(US, b) + ")";
  }

  private static String size(Figures figures, Bundle b) {
    return figures.length(b.lengthM())
        + " x "
        + figures.length(b.widthM())
        + " x "
        + figures.length(b.heightM());
  }
}
