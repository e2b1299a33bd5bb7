package skidway.audit;

import java.util.List;
import java.util.OptionalDouble;
import skidway.site.ChartRow;
import skidway.site.Grip;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;

/** The test site's machine, held in other ways; all else of it is known and confirmed. */
final class Machines {
  private Machines() {}

  static Grip forks(double loadCentreM) {
    return new Grip.Forks(OptionalDouble.of(loadCentreM));
  }

  static Grip slings(double angleDeg, double legKg) {
    return new Grip.Slings(OptionalDouble.of(angleDeg), OptionalDouble.of(legKg));
  }

  static Machine over(Grip grip) {
    return onLane("", grip);
  }

  /** The stand is reached on a lane; the machine itself is 1 m wide. */
  static Machine onLane(String laneId, Grip grip) {
    return new Machine(
        "crane",
        List.of(new MachineStand("M", new Point(20, 5), laneId)),
        List.of(new ChartRow(10, 3000), new ChartRow(20, 2000), new ChartRow(30, 1000)),
        grip,
        OptionalDouble.of(1),
        0,
        "site lead");
  }

  static Machine rigged(Machine machine, double riggingKg) {
    return new Machine(
        machine.name(),
        machine.stands(),
        machine.chart(),
        machine.grip(),
        machine.widthM(),
        riggingKg,
        machine.confirmedBy());
  }
}
