package skidway.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import skidway.audit.plane.Ring;
import skidway.audit.plane.Segment;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Wall;

/**
 * A stretch of a deck's edge, and how high a wall stands on it already.
 *
 * @param builtM 0 where no wall stands
 * @param wallId the highest wall there, or an empty text
 */
record EdgeStretch(Segment line, double builtM, String wallId) {
  /** A wall this much out of line still runs along an edge. */
  private static final double SINE_OF_FIVE_DEGREES = Math.sin(Math.toRadians(5));

  /** A wall whose middle is farther from an edge does not stand on it. */
  private static final double NEAR_M = 0.6;

  private static final double ROUNDING = 1e-9;

  /** What one wall covers of an edge, metres from the edge's start. */
  private record Cover(double fromM, double toM, Wall wall) {}

  static List<EdgeStretch> of(Deck deck, List<Wall> walls) {
    return Ring.segments(deck.outline().corners()).stream()
        .filter(side -> side.a().distanceTo(side.b()) > 0)
        .flatMap(side -> of(side, walls).stream())
        .toList();
  }

  boolean walled() {
    return builtM > 0;
  }

  private static List<EdgeStretch> of(Segment side, List<Wall> walls) {
    double lengthM = side.a().distanceTo(side.b());
    Point along = side.b().minus(side.a()).times(1 / lengthM);
    List<Cover> covers =
        walls.stream()
            .filter(wall -> wall.builtM() > 0 && runsAlong(wall, side.a(), along))
            .map(wall -> cover(wall, side.a(), along, lengthM))
            .toList();
    double[] cuts =
        Stream.concat(
                Stream.of(0.0, lengthM), covers.stream().flatMap(c -> Stream.of(c.fromM, c.toM)))
            .mapToDouble(Double::doubleValue)
            .sorted()
            .distinct()
            .toArray();
    List<EdgeStretch> stretches = new ArrayList<>();
    for (int i = 1; i < cuts.length; i++) {
      if (cuts[i] - cuts[i - 1] < Ledger.LENGTH_TOLERANCE_M) {
        continue; // Walls that meet leave no gap, whatever the rounding.
      }
      Segment line =
          new Segment(side.a().plus(along.times(cuts[i - 1])), side.a().plus(along.times(cuts[i])));
      double middleM = (cuts[i - 1] + cuts[i]) / 2;
      stretches.add(
          covers.stream()
              .filter(cover -> cover.fromM < middleM && middleM < cover.toM)
              .map(Cover::wall)
              .max(Comparator.comparingDouble(Wall::builtM))
              .map(wall -> new EdgeStretch(line, wall.builtM(), wall.id()))
              .orElseGet(() -> new EdgeStretch(line, 0, "")));
    }
    return stretches;
  }

  private static boolean runsAlong(Wall wall, Point start, Point along) {
    return wall.lengthM() > 0
        && Math.abs(along.cross(wall.along())) <= SINE_OF_FIVE_DEGREES + ROUNDING
        && DoubleStream.of(
                along.cross(wall.start().minus(start)), along.cross(wall.end().minus(start)))
            .allMatch(offM -> Math.abs(offM) <= NEAR_M + ROUNDING);
  }

  /** At a corner the timbers lap, so a wall covers its own thickness more at both ends. */
  private static Cover cover(Wall wall, Point start, Point along, double lengthM) {
    double a = along.dot(wall.start().minus(start));
    double b = along.dot(wall.end().minus(start));
    return new Cover(
        Math.max(0, Math.min(lengthM, Math.min(a, b) - wall.thicknessM())),
        Math.max(0, Math.min(lengthM, Math.max(a, b) + wall.thicknessM())),
        wall);
  }
}
