package skidway.site;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The machine that unloads. It takes a bundle off the truck, drives to one of its stands and puts
 * the bundle down from there. The chart is copied from the machine's own plate, which governs.
 *
 * @param chart rows by growing reach, capacity never growing
 * @param widthM of the machine itself as it travels, when known
 * @param riggingKg hooks, slings, attachment: lifted with every load
 * @param confirmedBy who compared the chart with the plate, or an empty text
 */
public record Machine(
    String name,
    List<MachineStand> stands,
    List<ChartRow> chart,
    Grip grip,
    OptionalDouble widthM,
    double riggingKg,
    String confirmedBy) {
  public Machine {
    stands = List.copyOf(stands);
    chart = List.copyOf(chart);
    if (stands.isEmpty() || chart.isEmpty()) {
      throw new IllegalArgumentException(
          "The machine " + name + " needs a stand and a load chart.");
    }
  }

  /** A machine of which only stands and chart are known. */
  public Machine(String name, List<MachineStand> stands, List<ChartRow> chart) {
    this(name, stands, chart, new Grip.Unstated(), OptionalDouble.empty(), 0, "");
  }
}
