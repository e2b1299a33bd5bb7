package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Wall;

/**
 * A part of a deck's edge along which the same wall stands, or none.
 *
 * @param wallM how high the wall is built already, the highest if there are several; 0 without any
 */
record EdgeStretch(Point from, Point to, double wallM) {
  /** A wall that is turned more against an edge does not run along it. */
  private static final double PARALLEL_DEG = 5;

  /** A wall whose centre line is farther from an edge, at either end, does not stand on it. */
  private static final double BESIDE_M = 0.6;

  /** Shorter parts are what rounding leaves, and no gap in a wall. */
  private static final double SHORTEST_M = 0.001;

  private static final double TOLERANCE_M = 1e-9;

  /** What a wall covers of an edge, from the edge's start. */
  private record Cover(Span span, double builtM) {}

  /** The whole outline, edge by edge. */
  static List<EdgeStretch> of(Outline outline, List<Wall> walls) {
    List<EdgeStretch> stretches = new ArrayList<>();
    List<Point> corners = outline.corners();
    for (int i = 0; i < corners.size(); i++) {
      stretches.addAll(edge(corners.get(i), corners.get((i + 1) % corners.size()), walls));
    }
    return stretches;
  }

  private static List<EdgeStretch> edge(Point from, Point to, List<Wall> walls) {
    double lengthM = from.distanceTo(to);
    Point along = to.minus(from).times(1 / lengthM);
    List<Cover> covers =
        walls.stream()
            .filter(wall -> wall.builtM() > 0 && runsAlong(wall, from, along))
            .map(wall -> cover(wall, from, along, lengthM))
            .toList();
    double[] cuts =
        Stream.concat(Stream.of(new Span(0, lengthM)), covers.stream().map(Cover::span))
            .flatMapToDouble(span -> DoubleStream.of(span.lowM(), span.highM()))
            .sorted()
            .toArray();
    List<EdgeStretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.length; i++) {
      double a = cuts[i];
      double b = cuts[i + 1];
      if (b - a > SHORTEST_M) {
        double builtM =
            covers.stream()
                .filter(c -> c.span.lowM() < (a + b) / 2 && (a + b) / 2 < c.span.highM())
                .mapToDouble(Cover::builtM)
                .max()
                .orElse(0);
        stretches.add(
            new EdgeStretch(from.plus(along.times(a)), from.plus(along.times(b)), builtM));
      }
    }
    return stretches;
  }

  private static boolean runsAlong(Wall wall, Point from, Point along) {
    double farthestM = Math.max(offM(wall.start(), from, along), offM(wall.end(), from, along));
    double turn = Math.abs(wall.along().dot(along.turnedLeft()));
    return turn <= Math.sin(Math.toRadians(PARALLEL_DEG)) + TOLERANCE_M
        && farthestM <= BESIDE_M + TOLERANCE_M;
  }

  /** Timbers lap at corners, so a wall covers its own thickness more at both ends. */
  private static Cover cover(Wall wall, Point from, Point along, double lengthM) {
    double s0 = wall.start().minus(from).dot(along);
    double s1 = wall.end().minus(from).dot(along);
    double cornerM = wall.thicknessM();
    return new Cover(
        new Span(
            within(Math.min(s0, s1) - cornerM, lengthM),
            within(Math.max(s0, s1) + cornerM, lengthM)),
        wall.builtM());
  }

  private static double within(double s, double lengthM) {
    return Math.max(0, Math.min(lengthM, s));
  }

  /** Distance from the line of an edge. */
  private static double offM(Point point, Point from, Point along) {
    return Math.abs(point.minus(from).dot(along.turnedLeft()));
  }
}
