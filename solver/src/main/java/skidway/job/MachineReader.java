package skidway.job;

import java.util.List;
import java.util.Optional;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;

/**
 * Reads the machine: its stands, and its load chart by growing reach and never growing capacity.
 */
final class MachineReader {
  private final Ids stands;
  private final Ids rows;

  MachineReader(Problems problems) {
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
    return f.finish(() -> new Found(new Machine(name, Read.values(at), Read.values(chart)), at));
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
    return f.finish(() -> new MachineStand(id, at));
  }

  private static Optional<ChartRow> row(Fields f) {
    double reachM = f.quantity("reach", Bounds.REACH);
    double capacityKg = f.quantity("capacity", Bounds.CAPACITY);
    return f.finish(() -> new ChartRow(reachM, capacityKg));
  }
}
