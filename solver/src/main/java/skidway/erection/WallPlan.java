package skidway.erection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.site.WallOpening;
import skidway.timber.Piece;

/**
 * Computes where each piece of a wall lies: its height from course and starter, its distance from
 * the wall's start from the pieces and openings to its left.
 *
 * <p>A course is filled from the left: timbers lie end to end, and one that would start inside a
 * door or window of that height starts at the opening's right edge instead. A distance given in the
 * packing list wins over the computed one.
 */
final class WallPlan {
  /** Timbers end within this distance of an opening's edge and still count as meeting it. */
  static final double EDGE_TOLERANCE_M = 0.15;

  private WallPlan() {}

  static List<Placement> place(Wall wall, double courseM, List<Piece> pieces) {
    Map<Integer, List<Piece>> courses = new TreeMap<>();
    for (Piece piece : pieces) {
      courses.computeIfAbsent(piece.course(), c -> new ArrayList<>()).add(piece);
    }
    List<WallOpening> openings =
        wall.openings().stream().sorted(Comparator.comparingDouble(WallOpening::fromM)).toList();
    List<Placement> placed = new ArrayList<>();
    courses.forEach((course, row) -> placeCourse(wall, openings, courseM, course, row, placed));
    return placed;
  }

  private static void placeCourse(
      Wall wall,
      List<WallOpening> openings,
      double courseM,
      int course,
      List<Piece> row,
      List<Placement> placed) {
    double bottom = bottomM(wall.starter(), course, courseM);
    double next = 0;
    row.sort(Comparator.comparingInt(Piece::position).thenComparing(Piece::mark));
    for (Piece piece : row) {
      double top = bottom + piece.section().heightM();
      double from = piece.fromLeftM().orElse(pastOpenings(openings, next, bottom, top));
      placed.add(new Placement(piece, wall, from, bottom));
      next = from + piece.lengthM();
    }
  }

  /** Height of a course's lower face above the wall's foot. */
  static double bottomM(Starter starter, int course, double courseM) {
    return course == 1 ? 0 : (starter.shareOfCourse() + course - 2) * courseM;
  }

  /**
   * @param openings of the wall, from left to right
   */
  private static double pastOpenings(
      List<WallOpening> openings, double from, double bottom, double top) {
    double at = from;
    for (WallOpening opening : openings) {
      boolean sameHeight = opening.sillM() < top - 1e-6 && opening.headM() > bottom + 1e-6;
      boolean inside = at > opening.fromM() - EDGE_TOLERANCE_M && at < opening.toM();
      if (sameHeight && inside) {
        at = opening.toM();
      }
    }
    return at;
  }
}
