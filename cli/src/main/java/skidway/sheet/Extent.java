package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;

/**
 * The upright rectangle of site that a map shows, metres: the boundary and all that lies beyond.
 */
record Extent(double x0, double y0, double x1, double y1) {
  private static final double MARGIN_M = 0.2;

  static Extent of(Site site, List<Spot> spots) {
    List<Point> points = new ArrayList<>(site.boundary().corners());
    site.decks().forEach(deck -> points.addAll(deck.outline().corners()));
    site.yards().forEach(yard -> points.addAll(yard.outline().corners()));
    site.lanes().forEach(lane -> points.addAll(Band.of(lane).corners()));
    site.keepClears().forEach(area -> points.addAll(area.outline().corners()));
    site.truckStands().forEach(stand -> points.addAll(stand.area().outline().corners()));
    site.machine().stands().forEach(stand -> points.add(stand.at()));
    site.walls().forEach(wall -> points.addAll(wall.footprint().outline().corners()));
    for (Spot spot : spots) {
      Outline strip = spot.stripM() > 0 ? spot.strip().outline() : spot.footprint().outline();
      points.addAll(spot.footprint().outline().corners());
      points.addAll(strip.corners());
    }
    return new Extent(
        points.stream().mapToDouble(Point::x).min().orElseThrow() - MARGIN_M,
        points.stream().mapToDouble(Point::y).min().orElseThrow() - MARGIN_M,
        points.stream().mapToDouble(Point::x).max().orElseThrow() + MARGIN_M,
        points.stream().mapToDouble(Point::y).max().orElseThrow() + MARGIN_M);
  }

  double widthM() {
    return x1 - x0;
  }

  double heightM() {
    return y1 - y0;
  }

  Point middle() {
    return new Point((x0 + x1) / 2, (y0 + y1) / 2);
  }
}
