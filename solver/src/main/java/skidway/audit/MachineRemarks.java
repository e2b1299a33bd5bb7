package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Grip;
import skidway.site.Machine;

/** Says what nobody told of the machine, so that it could not be checked; or that there is none. */
final class MachineRemarks {
  private MachineRemarks() {}

  /**
   * @param lanes whether the site has any
   */
  static List<String> of(Machine machine, boolean lanes) {
    if (machine.isNone()) {
      return List.of(
          "No machine unloads: its reach, load chart, grip, travel width and distance from overhead"
              + " lines do not apply; people carry every timber.",
          "Not checked: lifting timbers off the truck's bed by the lifting equation; nobody told how"
              + " high it is.");
    }
    List<String> remarks = new ArrayList<>();
    if (machine.grip() instanceof Grip.Unstated) {
      remarks.add(remark("load centre, slings and travel width", machine, "grip"));
    }
    if (machine.grip() instanceof Grip.Forks forks && forks.loadCentreM().isEmpty()) {
      remarks.add(remark("the load centre", machine, "loadCentre"));
    }
    if (machine.grip() instanceof Grip.Slings slings) {
      if (slings.angleDeg().isEmpty()) {
        remarks.add(remark("the angle of the slings and their pull", machine, "angle"));
      } else if (slings.legKg().isEmpty()) {
        remarks.add(remark("the pull in the slings", machine, "leg"));
      }
    }
    if (lanes && !(machine.grip() instanceof Grip.Unstated)) {
      machine.stands().stream()
          .filter(stand -> stand.laneId().isEmpty())
          .map(stand -> "the width of the way to stand " + stand.id())
          .forEach(way -> remarks.add(remark(way, machine, "lane")));
    }
    boolean onLanes = machine.stands().stream().anyMatch(stand -> !stand.laneId().isEmpty());
    if (onLanes && machine.widthM().isEmpty()) {
      remarks.add(remark("the machine's own width on its lanes", machine, "width"));
    }
    if (machine.confirmedBy().isEmpty()) {
      remarks.add(remark("the load chart against the plate", machine, "confirmedBy"));
    }
    return remarks;
  }

  private static String remark(String what, Machine machine, String field) {
    return "Not checked: " + what + " of " + machine.name() + "; needs " + field + ".";
  }
}
