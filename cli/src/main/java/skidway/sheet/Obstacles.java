package skidway.sheet;

import java.util.List;
import skidway.plan.Task;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.Lane;
import skidway.site.MachineStand;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Wall;
import skidway.site.WallOpening;

/** Tells the labels what they must not cover and what they had better not. */
final class Obstacles {
  private static final double WALL_COST = 0.9;
  private static final double STRIP_COST = 1.5;
  private static final double HAZARD_COST = 1.2;
  private static final double LANE_COST = 0.05;
  private static final double WIRE_M = 0.4;

  private Obstacles() {}

  static void add(Labels labels, Task task, Frame frame, List<Spot> stacks, List<Spot> waiting) {
    for (Spot spot : stacks) {
      labels.block(Slices.of(spot.footprint(), frame));
      if (spot.stripM() > 0) {
        labels.avoid(Slices.of(spot.strip(), frame), STRIP_COST);
      }
    }
    waiting.forEach(spot -> labels.block(Slices.of(spot.footprint(), frame)));
    ground(labels, task.site(), frame);
    building(labels, task.site(), frame);
  }

  private static void ground(Labels labels, Site site, Frame frame) {
    site.truckStands().forEach(t -> labels.block(Slices.of(t.area(), frame)));
    for (MachineStand stand : site.machine().stands()) {
      labels.block(Box.around(frame.at(stand.at()), 2 * Stands.DIAMOND, 2 * Stands.DIAMOND));
    }
    site.keepClears()
        .forEach(k -> labels.avoid(List.of(Box.of(frame.at(k.outline()))), HAZARD_COST));
    site.lanes().forEach(lane -> lane(labels, lane, frame));
    for (OverheadLine line : site.overheadLines()) {
      along(labels, line.from(), line.to(), WIRE_M, HAZARD_COST, frame);
    }
  }

  private static void lane(Labels labels, Lane lane, Frame frame) {
    List<Point> line = lane.centreLine();
    for (int i = 1; i < line.size(); i++) {
      along(labels, line.get(i - 1), line.get(i), lane.widthM(), LANE_COST, frame);
    }
  }

  private static void along(
      Labels labels, Point from, Point to, double widthM, double costPerMm2, Frame frame) {
    Point way = to.minus(from);
    if (way.length() > 0 && widthM > 0) {
      double headingDeg = Math.toDegrees(Math.atan2(way.y(), way.x()));
      Footprint part = new Footprint(from.plus(way.times(0.5)), headingDeg, way.length(), widthM);
      labels.avoid(Slices.of(part, frame), costPerMm2);
    }
  }

  private static void building(Labels labels, Site site, Frame frame) {
    for (Wall wall : site.walls()) {
      labels.avoid(Slices.of(wall.footprint(), frame), WALL_COST);
      wall.openings().stream()
          .filter(WallOpening::door)
          .forEach(
              door ->
                  labels.avoid(
                      List.of(
                          Box.of(
                                  List.of(
                                      frame.at(wall.at(door.fromM())),
                                      frame.at(wall.at(door.toM()))))
                              .grown(1)),
                      HAZARD_COST));
    }
    for (Deck deck : site.decks()) {
      deck.openings()
          .forEach(o -> labels.avoid(List.of(Box.of(frame.at(o.outline()))), HAZARD_COST));
      deck.steps()
          .forEach(
              s ->
                  labels.avoid(
                      List.of(Box.of(List.of(frame.at(s.foot()), frame.at(s.top()))).grown(1.5)),
                      HAZARD_COST));
    }
  }
}
