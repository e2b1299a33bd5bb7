package skidway.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Wall;
import skidway.site.Zone;

/**
 * Chooses the headings of a zone's spots: along and across its own edges and the walls. Directions
 * within a degree are one; at most three pairs of them are kept, those with the longest edges.
 */
final class Headings {
  private static final double SAME_DEG = 1;
  private static final int MOST_PAIRS = 3;

  /**
   * A direction with less than this share of all edges is not worth rows of its own, unless no
   * other has more: a round yard is nothing but short edges.
   */
  private static final double LEAST_SHARE = 0.12;

  private record Direction(double headingDeg, double lengthM) {}

  private Headings() {}

  /** Degrees, at least 0 and below 180, two at right angles for each direction kept. */
  static List<Double> of(Zone zone, Site site) {
    List<Direction> directions = new ArrayList<>();
    List<Point> corners = zone.outline().corners();
    for (int i = 0; i < corners.size(); i++) {
      add(directions, corners.get((i + 1) % corners.size()).minus(corners.get(i)));
    }
    for (Wall wall : site.walls()) {
      add(directions, wall.end().minus(wall.start()));
    }
    double allM = directions.stream().mapToDouble(Direction::lengthM).sum();
    double longestM = directions.stream().mapToDouble(Direction::lengthM).max().orElse(0);
    List<Double> headings = new ArrayList<>();
    directions.stream()
        .sorted(Comparator.comparingDouble(Direction::lengthM).reversed())
        .filter(d -> d.lengthM >= Math.min(LEAST_SHARE * allM, longestM))
        .limit(MOST_PAIRS)
        .forEach(
            d -> {
              headings.add(d.headingDeg);
              headings.add(d.headingDeg + 90);
            });
    return headings;
  }

  private static void add(List<Direction> directions, Point edge) {
    double degrees = Math.toDegrees(Math.atan2(edge.y(), edge.x()));
    double headingDeg = Math.round((degrees + 360) % 90 * 1000) / 1000.0 % 90;
    for (int i = 0; i < directions.size(); i++) {
      Direction known = directions.get(i);
      double turn = Math.abs(known.headingDeg - headingDeg);
      if (Math.min(turn, 90 - turn) <= SAME_DEG) {
        directions.set(i, new Direction(known.headingDeg, known.lengthM + edge.length()));
        return;
      }
    }
    directions.add(new Direction(headingDeg, edge.length()));
  }
}
