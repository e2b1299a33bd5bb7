package skidway.staging;

import java.util.List;
import java.util.Optional;
import skidway.limits.LoadChart;
import skidway.plan.Task;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.timber.Bundle;

/** Chooses the stand from which the machine puts a bundle down: the one with the shortest drive. */
final class Lifts {
  /** A stand, the distance driven to it, and the reach from it, metres. */
  record Lift(MachineStand stand, double driveM, double reachM, double capacityKg) {}

  private final Task task;
  private final Machine machine;

  Lifts(Task task) {
    this.task = task;
    this.machine = task.site().machine();
  }

  /** The best lift of a bundle from its truck onto a place, if the machine can do it. */
  Optional<Lift> offTruck(Bundle bundle, double massKg, Point place) {
    return best(massKg, truckOf(bundle), List.of(place));
  }

  /**
   * The best lift of a mass between two places from one stand, for a machine standing somewhere.
   */
  Optional<Lift> across(double massKg, Point machineAt, Point from, Point to) {
    return best(massKg, machineAt, List.of(from, to));
  }

  private Optional<Lift> best(double massKg, Point machineAt, List<Point> places) {
    Lift best = null;
    for (MachineStand stand : machine.stands()) {
      double reach = 0;
      for (Point place : places) {
        reach = Math.max(reach, stand.at().distanceTo(place));
      }
      double capacity = LoadChart.capacityKg(machine, reach);
      double drive = machineAt.distanceTo(stand.at());
      boolean better =
          best == null
              || drive < best.driveM() - 1e-9
              || (drive < best.driveM() + 1e-9 && reach < best.reachM() - 1e-9);
      if (capacity >= massKg && better) {
        best = new Lift(stand, drive, reach, capacity);
      }
    }
    return Optional.ofNullable(best);
  }

  /** Whether any stand reaches the place at all, whatever the mass. */
  boolean reaches(Point place) {
    double farthest = LoadChart.farthestM(machine);
    return machine.stands().stream().anyMatch(s -> s.at().distanceTo(place) <= farthest);
  }

  private Point truckOf(Bundle bundle) {
    return task.delivery()
        .load(bundle.loadId())
        .flatMap(load -> task.site().truckStand(load.truckStandId()))
        .orElseThrow(
            () -> new IllegalArgumentException("The load of " + bundle.id() + " has no stand."))
        .area()
        .centre();
  }
}
