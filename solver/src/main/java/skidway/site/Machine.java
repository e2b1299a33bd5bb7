package skidway.site;

import java.util.List;

/**
 * The machine that unloads. It takes a bundle off the truck, drives to one of its stands and puts
 * the bundle down from there. The chart is copied from the machine's own plate, which governs.
 *
 * @param chart rows by growing reach, capacity never growing
 */
public record Machine(String name, List<MachineStand> stands, List<ChartRow> chart) {
  public Machine {
    stands = List.copyOf(stands);
    chart = List.copyOf(chart);
    if (stands.isEmpty() || chart.isEmpty()) {
      throw new IllegalArgumentException(
          "The machine " + name + " needs a stand and a load chart.");
    }
  }
}
