package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.site.ChartRow;
import skidway.site.Grip;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;

/**
 * Reads the machine: its stands, its load chart by growing reach and never growing capacity, and
 * how it holds a bundle.
 */
final class MachineReader {
  private final Ids stands;
  private final Ids rows;
  private final Ids lanes;

  MachineReader(Ids lanes, Problems problems) {
    this.lanes = lanes;
    this.stands = new Ids("machine stand", problems);
    this.rows = new Ids("row of the load chart", problems);
  }

  /** A machine and its stands with their places. */
  record Found(Machine machine, List<Read<MachineStand>> stands) {}

  Optional<Found> machine(Fields site) {
    return site.object("machine", "machine").flatMap(this::read);
  }

  private Optional<Found> read(Fields f) {
    String name = Plain.line(f, "name");
    List<Read<MachineStand>> at = f.objects("stands", 1, stands, this::stand);
    List<Read<ChartRow>> chart = f.objects("chart", 1, rows, MachineReader::row);
    for (int i = 1; i < chart.size(); i++) {
      follows(chart.get(i), chart.get(i - 1).value(), f);
    }
    Grip grip = GripReader.grip(f);
    OptionalDouble widthM = f.optional("width", Bounds.MACHINE_WIDTH);
    double riggingKg = f.optional("rigging", Bounds.RIGGING).orElse(0);
    String confirmedBy = Plain.lineOrNothing(f, "confirmedBy");
    if (f.sound() && riggingKg >= chart.get(0).value().capacityKg()) {
      f.report(
          f.at("rigging"),
          "rigging that is all the machine lifts",
          "rigging counts as load and leaves some of the chart's largest capacity",
          "correct \"rigging\"; it is the mass of hooks, slings and attachments alone");
    }
    return f.finish(
        () ->
            new Found(
                new Machine(
                    name,
                    Read.values(at),
                    Read.values(chart),
                    grip,
                    widthM,
                    riggingKg,
                    confirmedBy),
                at));
  }

  private static void follows(Read<ChartRow> row, ChartRow before, Fields f) {
    if (row.value().reachM() <= before.reachM()) {
      f.report(
          row.at().at("reach"),
          "reach " + f.length(row.value().reachM()) + " after " + f.length(before.reachM()),
          "the reach grows from row to row",
          "put the rows in the order of the machine's own chart");
    }
    if (row.value().capacityKg() > before.capacityKg()) {
      f.report(
          row.at().at("capacity"),
          "a capacity above that of the shorter reach",
          "a machine lifts no more the farther it reaches",
          "copy the row again from the machine's own chart");
    }
  }

  private Optional<MachineStand> stand(Fields f) {
    String id = f.id(stands);
    Point at = Points.point(f, "at");
    String lane = f.has("lane") ? f.reference("lane") : "";
    lanes.require(lane, f.at("lane"), "name a lane, or remove \"lane\" if it drives over the open");
    return f.finish(() -> new MachineStand(id, at, lane));
  }

  private static Optional<ChartRow> row(Fields f) {
    double reachM = f.quantity("reach", Bounds.REACH);
    double capacityKg = f.quantity("capacity", Bounds.CAPACITY);
    return f.finish(() -> new ChartRow(reachM, capacityKg));
  }
}
