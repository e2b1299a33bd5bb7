package skidway.audit;

import skidway.audit.plane.Polygon;
import skidway.audit.plane.Rectangle;
import skidway.audit.plane.Ring;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Lane;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.TruckStand;
import skidway.site.Wall;

/**
 * Checks that a spot leaves clear what the site needs clear: walls, lanes, trucks, keep-clears,
 * trenches.
 */
final class ClearRules {
  private final Scene scene;
  private final Ledger ledger;

  ClearRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    Site site = scene.task().site();
    for (Place place : scene.places()) {
      site.walls().stream().filter(w -> w.lengthM() > 0).forEach(w -> workingStrip(place, w));
      site.lanes().forEach(lane -> lanesClear(place, lane));
      site.truckStands().forEach(stand -> truckClear(place, stand));
      site.machine().stands().forEach(stand -> machineClear(place, stand));
      site.keepClears().forEach(keepClear -> keepClear(place, keepClear));
    }
  }

  private void workingStrip(Place place, Wall wall) {
    ledger.apart(
        Rule.WORKING_STRIP,
        place.id(),
        workingRectangle(wall).separation(place.footprint()),
        d ->
            place.capitalName()
                + " stands "
                + d
                + " within the working strip of wall "
                + wall.id()
                + ".");
  }

  private Rectangle workingRectangle(Wall wall) {
    double insideM = wall.thicknessM() / 2 + scene.setting(Setting.WALL_STRIP_INSIDE);
    double outsideM = wall.thicknessM() / 2 + scene.setting(Setting.WALL_STRIP_OUTSIDE);
    Point middle = wall.at(wall.lengthM() / 2).plus(wall.inward().times((insideM - outsideM) / 2));
    return Rectangle.of(
        new Footprint(middle, wall.footprint().headingDeg(), wall.lengthM(), insideM + outsideM));
  }

  private void lanesClear(Place place, Lane lane) {
    double apartM =
        Ring.line(lane.centreLine()).stream()
            .mapToDouble(place.footprint()::distanceTo)
            .min()
            .orElseThrow();
    ledger.least(
        Rule.LANES_CLEAR,
        place.id(),
        apartM,
        lane.widthM() / 2,
        d -> place.capitalName() + " stands " + d + " from the middle of lane " + lane.id());
  }

  private void truckClear(Place place, TruckStand stand) {
    ledger.apart(
        Rule.TRUCK_CLEAR,
        place.id(),
        Rectangle.of(stand.area()).separation(place.footprint()),
        d -> place.capitalName() + " stands " + d + " within truck stand " + stand.id() + ".");
  }

  private void machineClear(Place place, MachineStand stand) {
    ledger.least(
        Rule.MACHINE_CLEAR,
        place.id(),
        place.footprint().distanceTo(stand.at()),
        scene.setting(Setting.MACHINE_STAND_ROOM),
        d -> place.capitalName() + " stands " + d + " from machine stand " + stand.id());
  }

  private void keepClear(Place place, KeepClear keepClear) {
    double apartM = Polygon.of(keepClear.outline()).separation(place.footprint());
    boolean dug = keepClear.excavation();
    Rule rule = dug ? Rule.EXCAVATION_EDGE : Rule.KEEP_CLEAR;
    String name =
        (dug ? "excavation " : "keep-clear ") + keepClear.id() + " (" + keepClear.reason() + ")";
    if (apartM >= -Ledger.LENGTH_TOLERANCE_M) {
      ledger.least(
          rule,
          place.id(),
          apartM,
          dug ? edgeSetbackM(keepClear) : keepClear.marginM(),
          d -> place.capitalName() + " stands " + d + " from " + name);
    } else {
      ledger.apart(
          rule,
          place.id(),
          apartM,
          d -> place.capitalName() + " stands " + d + " within " + name + ".");
    }
  }

  /** Loads near its edge push an excavation's side in, the deeper the farther. */
  private double edgeSetbackM(KeepClear dug) {
    double forDepthM = scene.setting(Setting.EXCAVATION_DEPTH_SHARE) * dug.depthM().orElse(0);
    double leastM = Math.max(scene.setting(Setting.EXCAVATION_SETBACK), forDepthM);
    return Math.max(leastM, dug.marginM());
  }
}
