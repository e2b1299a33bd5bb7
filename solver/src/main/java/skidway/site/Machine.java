package skidway.site;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The machine that unloads. It takes a bundle off the truck, drives to one of its stands and puts
 * the bundle down from there. The chart is copied from the machine's own plate, which governs. A
 * site may have {@link #NONE}: then people carry every timber.
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
  /** No machine: it stands nowhere and lifts nothing. */
  public static final Machine NONE =
      new Machine("", List.of(), List.of(), new Grip.Unstated(), OptionalDouble.empty(), 0, "");

  public Machine {
    stands = List.copyOf(stands);
    chart = List.copyOf(chart);
    if (!name.isEmpty() && (stands.isEmpty() || chart.isEmpty())) {
      throw new IllegalArgumentException(
          "The machine " + name + " needs a stand and a load chart.");
    }
  }

  /** A machine of which only stands and chart are known. */
  public Machine(String name, List<MachineStand> stands, List<ChartRow> chart) {
    this(name, stands, chart, new Grip.Unstated(), OptionalDouble.empty(), 0, "");
  }

  public Optional<MachineStand> stand(String id) {
    return stands.stream().filter(stand -> stand.id().equals(id)).findFirst();
  }

  /** Whether there is none. */
  public boolean isNone() {
    return stands.isEmpty();
  }
}
