package skidway.limits;

import java.util.List;

/**
 * What lifting often takes away: the frequency multiplier of the revised lifting equation, NIOSH
 * 94-110 (rev. 9/2021) Table 5, pp. 13-15. The table is {@code lift-frequency.csv} beside this
 * class; between its rows it is linear.
 */
public final class LiftFrequency {
  private static final List<double[]> ROWS = load();

  private LiftFrequency() {}

  /**
   * The frequency multiplier FM.
   *
   * @param lowDown whether the hands are below 75 cm (30 in) where the lift begins
   */
  public static double multiplier(double liftsPerMin, LiftDuration duration, boolean lowDown) {
    int column = duration.column + (lowDown ? 0 : 1);
    double[] before = ROWS.get(0);
    if (liftsPerMin <= before[0]) {
      return before[column];
    }
    for (double[] row : ROWS) {
      if (row[column] == 0) {
        return 0;
      }
      if (liftsPerMin <= row[0]) {
        double share = (liftsPerMin - before[0]) / (row[0] - before[0]);
        return before[column] + share * (row[column] - before[column]);
      }
      before = row;
    }
    return 0;
  }

  /** Lifts a minute over a quarter of an hour, where people do not lift all the time (p. 16). */
  public static double perMin(double liftsInFifteenMin) {
    return liftsInFifteenMin / 15;
  }

  private static List<double[]> load() {
    return CsvResource.rows("lift-frequency.csv").stream()
        .map(row -> row.stream().mapToDouble(Double::parseDouble).toArray())
        .toList();
  }
}
