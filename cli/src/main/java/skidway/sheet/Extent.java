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
    spots.forEach(spot -> points.addAll(ground(spot)));
    return of(points, MARGIN_M);
  }

  private static List<Point> ground(Spot spot) {
    List<Point> points = new ArrayList<>(spot.footprint().outline().corners());
    if (spot.stripM() > 0) {
      points.addAll(spot.strip().outline().corners());
    }
    return points;
  }

  private static Extent of(List<Point> points, double marginM) {
    Extent bare =
        new Extent(
            points.stream().mapToDouble(Point::x).min().orElseThrow(),
            points.stream().mapToDouble(Point::y).min().orElseThrow(),
            points.stream().mapToDouble(Point::x).max().orElseThrow(),
            points.stream().mapToDouble(Point::y).max().orElseThrow());
    return bare.grown(marginM);
  }

  /** A deck or yard with its spots and their open strips. */
  static Extent of(List<Outline> outlines, List<Spot> spots) {
    List<Point> points = new ArrayList<>();
    outlines.forEach(outline -> points.addAll(outline.corners()));
    spots.forEach(spot -> points.addAll(ground(spot)));
    return of(points, 0);
  }

  Extent grown(double byM) {
    return new Extent(x0 - byM, y0 - byM, x1 + byM, y1 + byM);
  }

  /** What both show. */
  Extent common(Extent other) {
    return new Extent(
        Math.max(x0, other.x0),
        Math.max(y0, other.y0),
        Math.min(x1, other.x1),
        Math.min(y1, other.y1));
  }

  double longerM() {
    return Math.max(widthM(), heightM());
  }

  /** Whether something with these corners may show; upright boxes are compared. */
  boolean touches(List<Point> corners) {
    Extent other = of(corners, 0);
    return other.x0 <= x1 && other.x1 >= x0 && other.y0 <= y1 && other.y1 >= y0;
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
