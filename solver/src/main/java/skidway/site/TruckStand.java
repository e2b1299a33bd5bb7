package skidway.site;

import java.util.List;

/** Where a truck stands while it is unloaded; nothing is put down there. */
public record TruckStand(String id, Footprint area) {
  /** Where people take timbers off by hand: the middles of both long sides. */
  public List<Point> sides() {
    boolean lengthwise = area.lengthM() >= area.widthM();
    Point across = lengthwise ? area.along().turnedLeft() : area.along();
    Point off = across.times(Math.min(area.lengthM(), area.widthM()) / 2);
    return List.of(area.centre().plus(off), area.centre().minus(off));
  }
}
