package skidway.job;

import java.util.List;
import java.util.Optional;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Lane;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.TruckStand;

/** Reads what keeps the ground free: lanes, keep-clears and truck stands. */
final class GroundReader {
  private final Ids lanes;
  private final Ids keepClears;
  private final Ids truckStands;

  GroundReader(Ids truckStands, Problems problems) {
    this.truckStands = truckStands;
    this.lanes = new Ids("lane", problems);
    this.keepClears = new Ids("keep-clear", problems);
  }

  List<Read<Lane>> lanes(Fields site) {
    return site.optionalObjects("lanes", lanes, this::lane);
  }

  List<Read<KeepClear>> keepClears(Fields site) {
    return site.optionalObjects("keepClears", keepClears, this::keepClear);
  }

  List<Read<TruckStand>> truckStands(Fields site) {
    return site.objects("truckStands", 1, truckStands, this::truckStand);
  }

  private Optional<Lane> lane(Fields f) {
    String id = f.id(lanes);
    List<Point> line = Points.line(f, "line");
    double widthM = f.quantity("width", Bounds.LANE_WIDTH);
    return f.finish(() -> new Lane(id, line, widthM));
  }

  private Optional<KeepClear> keepClear(Fields f) {
    String id = f.id(keepClears);
    Outline outline = OutlineCheck.simple(f, "outline");
    double marginM = f.optional("margin", Bounds.MARGIN).orElse(0);
    String reason = Plain.line(f, "reason");
    boolean walkable = f.flag("walkable", false);
    return f.finish(() -> new KeepClear(id, outline, marginM, reason, walkable));
  }

  private Optional<TruckStand> truckStand(Fields f) {
    String id = f.id(truckStands);
    Point centre = Points.point(f, "centre");
    double headingDeg = f.optional("heading", Bounds.DIRECTION).orElse(0);
    double lengthM = f.quantity("length", Bounds.TRUCK_LENGTH);
    double widthM = f.quantity("width", Bounds.TRUCK_WIDTH);
    return f.finish(() -> new TruckStand(id, new Footprint(centre, headingDeg, lengthM, widthM)));
  }
}
