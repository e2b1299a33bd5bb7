package skidway.limits;

import java.util.Comparator;
import skidway.site.ChartRow;
import skidway.site.Machine;

/**
 * Reads a machine's load chart. Between two rows the row of the next larger reach rules; nothing is
 * interpolated (BC Crane Safety, load charts). The chart on the machine itself governs.
 */
public final class LoadChart {
  private LoadChart() {}

  /** What the machine may lift at a reach, kg; 0 beyond the last row. */
  public static double capacityKg(Machine machine, double reachM) {
    return machine.chart().stream()
        .filter(row -> row.reachM() >= reachM)
        .min(Comparator.comparingDouble(ChartRow::reachM))
        .map(ChartRow::capacityKg)
        .orElse(0.0);
  }

  /** The farthest reach of the chart, metres. */
  public static double farthestM(Machine machine) {
    return machine.chart().stream().mapToDouble(ChartRow::reachM).max().orElse(0);
  }
}
