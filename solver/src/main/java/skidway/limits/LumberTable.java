package skidway.limits;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import skidway.site.JoistDesign;

/**
 * Looks up the strength of sawn joists by species group, grade and size. Bending takes the size
 * factor and the factor for repeated members, F'b = Fb CF Cr; nothing else is adjusted, so the
 * joists are dry and the load is of normal duration. Values with their sources are in {@code
 * lumber.csv} and {@code lumber-sizes.csv}; the floor's designer governs.
 */
public final class LumberTable {
  /** Cr: joists that share a floor help each other, if no farther apart than 24 in. */
  private static final double REPEATED = 1.15;

  private static final double REPEATED_TO_M = 0.6096;

  /** Floor of a light-framed house, 10 psf: the dead load of the published span tables. */
  public static final double USUAL_DEAD_KPA = 0.4788;

  private static final double PA_PER_PSI = 6894.757;
  private static final double M_PER_IN = 0.0254;
  private static final Map<String, Grade> GRADES = grades();
  private static final Map<String, Size> SIZES = sizes();

  private record Grade(String name, double bendingPa, double shearPa, String source) {}

  private record Size(String name, double thicknessM, double depthM, double factor) {}

  private LumberTable() {}

  /**
   * A joist's strength; names count whatever their case, spaces and points.
   *
   * @param spacingM from the middle of one joist to the next
   * @param deadKpa the floor's own weight
   */
  public static Optional<JoistDesign.Lumber> find(
      String species, String grade, String size, double spacingM, double deadKpa) {
    Grade g = GRADES.get(gradeKey(species, grade));
    Size s = SIZES.get(sizeKey(size));
    if (g == null || s == null) {
      return Optional.empty();
    }
    double repeated = spacingM <= REPEATED_TO_M + 1e-6 ? REPEATED : 1;
    return Optional.of(
        new JoistDesign.Lumber(
            g.name() + " " + s.name(),
            g.bendingPa() * s.factor() * repeated,
            g.shearPa(),
            s.thicknessM() * s.depthM() * s.depthM() / 6,
            s.thicknessM() * s.depthM(),
            deadKpa,
            g.source()));
  }

  /** Every species group with its grade, such as {@code hem-fir No.1}. */
  public static List<String> gradeNames() {
    return GRADES.values().stream().map(Grade::name).toList();
  }

  /** Every size, such as {@code 2x10}. */
  public static List<String> sizeNames() {
    return SIZES.values().stream().map(Size::name).toList();
  }

  private static Map<String, Grade> grades() {
    Map<String, Grade> table = new LinkedHashMap<>();
    for (List<String> row : CsvResource.rows("lumber.csv")) {
      boolean seen = row.get(4).equals("seen") && row.get(7).equals("seen");
      table.put(
          gradeKey(row.get(0), row.get(1)),
          new Grade(
              row.get(0) + " " + row.get(1),
              Double.parseDouble(row.get(2)) * PA_PER_PSI,
              Double.parseDouble(row.get(5)) * PA_PER_PSI,
              seen
                  ? "HUD Residential Structural Design Guide, 2nd ed. (2017), example 5.1"
                  : "from memory, confirm; older editions of NDS Table 4A"));
    }
    return table;
  }

  private static Map<String, Size> sizes() {
    Map<String, Size> table = new LinkedHashMap<>();
    for (List<String> row : CsvResource.rows("lumber-sizes.csv")) {
      table.put(
          sizeKey(row.get(0)),
          new Size(
              row.get(0),
              Double.parseDouble(row.get(1)) * M_PER_IN,
              Double.parseDouble(row.get(2)) * M_PER_IN,
              Double.parseDouble(row.get(3))));
    }
    return table;
  }

  /** {@code No.2}, {@code No 2}, {@code #2} and {@code 2} are one grade. */
  private static String gradeKey(String species, String grade) {
    return lower(species).replaceAll("[^\\p{L}]", "")
        + " "
        + lower(grade).replaceAll("[^\\p{L}0-9]", "").replaceFirst("^no(?=\\d)", "");
  }

  private static String sizeKey(String size) {
    return lower(size).replace('\u00d7', 'x').replaceAll("[^x0-9]", "");
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
