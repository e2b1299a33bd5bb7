package skidway;

import java.util.Locale;
import skidway.limits.LumberTable;
import skidway.limits.SoilTable;
import skidway.site.JoistDesign;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/** The parts of SOURCES.md that show the tables of ground and joists. */
final class LimitTables {
  private static final Figures METRIC = new Figures(UnitSystem.METRIC);
  private static final Figures US = new Figures(UnitSystem.US);

  private LimitTables() {}

  static String ground() {
    StringBuilder page =
        new StringBuilder(
            """

        ## Ground

        Presumptive pressures where nobody tested the ground: IBC 2012 Table 1806.2, IRC R401.4.1, as
        restated in secondary texts; look up the edition in force. They hold for undisturbed ground.
        Cells with their flags: `src/main/resources/skidway/limits/soil.csv`.

        | soil | metric | US | covers |
        |---|---|---|---|
        """);
    for (SoilTable.Soil soil : SoilTable.all()) {
      boolean known = soil.kpa().isPresent();
      page.append(
          RulesPagesTest.row(
              soil.name(),
              known ? METRIC.pressure(soil.kpa().getAsDouble()) : "none",
              known ? US.pressure(soil.kpa().getAsDouble()) : "none",
              soil.covers()));
    }
    return page.toString();
  }

  static String joists() {
    StringBuilder page =
        new StringBuilder(
            """

        ## Joists

        Adjusted bending stress Fb CF Cr and shear stress Fv, at most 24 in apart. Editions of the NDS
        differ; the lower figures are kept. The floor's designer governs. Cells with their sources and
        flags: `src/main/resources/skidway/limits/lumber.csv` and `lumber-sizes.csv`.

        | joist | bending | shear | source |
        |---|---|---|---|
        """);
    for (String grade : LumberTable.gradeNames()) {
      int space = grade.lastIndexOf(' ');
      for (String size : LumberTable.sizeNames()) {
        JoistDesign.Lumber joist =
            LumberTable.find(grade.substring(0, space), grade.substring(space + 1), size, 0.4064, 0)
                .orElseThrow();
        page.append(
            RulesPagesTest.row(
                joist.name(), psi(joist.bendingPa()), psi(joist.shearPa()), joist.source()));
      }
    }
    return page.toString();
  }

  private static String psi(double pa) {
    return String.format(Locale.ROOT, "%.2f MPa, %.0f psi", pa / 1e6, pa / 6894.757);
  }
}
