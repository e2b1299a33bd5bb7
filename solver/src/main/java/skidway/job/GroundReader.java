package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

  /** The ids found are left with {@code lanes} and {@code truckStands}, for what names them. */
  GroundReader(Ids lanes, Ids truckStands, Problems problems) {
    this.lanes = lanes;
    this.truckStands = truckStands;
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
    boolean excavation = f.flag("excavation", false);
    OptionalDouble depthM = f.optional("depth", Bounds.DEPTH);
    if (f.sound() && depthM.isPresent() && !excavation) {
      f.report(
          f.at("depth"),
          "a depth of keep-clear \"" + id + "\", which is no excavation",
          "only an excavation has a depth",
          "add \"excavation\": true, or remove \"depth\"");
    } else if (f.sound() && walkable && excavation) {
      f.report(
          f.at("walkable"),
          "keep-clear \"" + id + "\" as an excavation that people walk over",
          "people walk round an open excavation",
          "remove \"walkable\", or \"excavation\" if it is covered");
    }
    return f.finish(
        () -> new KeepClear(id, outline, marginM, reason, walkable, excavation, depthM));
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
