package skidway.limits;

import java.util.OptionalDouble;
import skidway.site.ChartRow;
import skidway.site.Grip;
import skidway.site.Machine;

/**
 * Reads a machine's load chart. Between two rows the row of the next larger reach rules; nothing is
 * interpolated (BC Crane Safety, load charts). The chart on the machine itself governs.
 */
public final class LoadChart {
  private LoadChart() {}

  /** What the machine may lift at a reach, kg; 0 beyond the last row. */
  public static double capacityKg(Machine machine, double reachM) {
    for (ChartRow row : machine.chart()) {
      if (row.reachM() >= reachM) {
        return row.capacityKg();
      }
    }
    return 0;
  }

  /**
   * How heavy a bundle may be at a reach, kg. Rigging counts as load (BC Crane Safety, load
   * charts). On forks a bundle whose middle is farther out than the plate's load centre counts in
   * proportion (fork truck training, after OSHA); the plate governs.
   *
   * @return 0 where nothing can be lifted
   */
  public static double bundleCapacityKg(Machine machine, double reachM, double bundleWidthM) {
    double grossKg = capacityKg(machine, reachM) * loadCentreShare(machine.grip(), bundleWidthM);
    return Math.max(0, grossKg - machine.riggingKg());
  }

  /** What is left of a capacity when the load's middle is beyond the load centre. */
  private static double loadCentreShare(Grip grip, double bundleWidthM) {
    OptionalDouble loadCentreM =
        grip instanceof Grip.Forks forks ? forks.loadCentreM() : OptionalDouble.empty();
    double middleM = bundleWidthM / 2;
    return Math.min(1, loadCentreM.orElse(middleM) / middleM);
  }

  /** The farthest reach of the chart, metres. */
  public static double farthestM(Machine machine) {
    return machine.chart().stream().mapToDouble(ChartRow::reachM).max().orElse(0);
  }
}
