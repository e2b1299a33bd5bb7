package skidway.erection;

import static skidway.testkit.SiteBuilder.aSite;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.site.WallOpening;
import skidway.testkit.BundleBuilder;
import skidway.timber.Moisture;
import skidway.timber.Piece;
import skidway.timber.Section;

/**
 * A house drawn wall by wall, seen from outside:
 *
 * <pre>
 *   AAAAAAAA     course 3
 *   BB####CC     course 2, beside a window
 *   DDDDEEEE     course 1
 * </pre>
 *
 * A letter is half a metre of the timber of that mark, {@code #} of the wall's only opening, a
 * point of nothing at all. Walls are 0.2 m thick.
 */
final class DrawnHouse {
  static final double CELL_M = 0.5;
  static final double COURSE_M = 0.15; // as the builder's site has it

  private final List<Wall> walls = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();

  static DrawnHouse aHouse() {
    return new DrawnHouse();
  }

  DrawnHouse wall(
      String id, double x0, double y0, double x1, double y1, Starter starter, String drawing) {
    List<String> rows = drawing.strip().lines().map(String::strip).toList();
    List<WallOpening> openings = new ArrayList<>();
    int left = rows.stream().mapToInt(r -> r.indexOf('#')).filter(i -> i >= 0).min().orElse(-1);
    int right = rows.stream().mapToInt(r -> r.lastIndexOf('#')).max().orElse(-1);
    double sill = Double.POSITIVE_INFINITY;
    double head = 0;
    for (int course = 1; course <= rows.size(); course++) {
      String row = rows.get(rows.size() - course);
      double bottom = WallPlan.bottomM(starter, course, COURSE_M);
      if (row.contains("#")) {
        sill = Math.min(sill, bottom);
        head = bottom + heightM(starter, course);
      }
      course(id, course, heightM(starter, course), row);
    }
    if (right >= 0) {
      double width = (right + 1 - left) * CELL_M;
      openings.add(new WallOpening(id + " opening", left * CELL_M, width, sill, head, false));
    }
    walls.add(new Wall(id, new Point(x0, y0), new Point(x1, y1), 0.2, starter, openings));
    return this;
  }

  private static double heightM(Starter starter, int course) {
    return course == 1 ? starter.shareOfCourse() * COURSE_M : COURSE_M;
  }

  private void course(String wall, int course, double heightM, String row) {
    TreeMap<Integer, String> starts = new TreeMap<>();
    for (int i = 0; i < row.length(); i++) {
      String mark = row.substring(i, i + 1);
      if (Character.isLetter(row.charAt(i)) && row.indexOf(mark) == i) {
        starts.put(i, mark);
      }
    }
    int position = 0;
    for (var start : starts.entrySet()) {
      int cells = row.lastIndexOf(start.getValue()) + 1 - start.getKey();
      position++;
      piece(
          start.getValue(),
          wall,
          course,
          position,
          start.getKey() * CELL_M,
          cells * CELL_M,
          heightM);
    }
  }

  /** A piece that no drawing shows well. */
  DrawnHouse piece(
      String mark,
      String wall,
      int course,
      int position,
      double fromM,
      double lengthM,
      double heightM) {
    pieces.add(
        new Piece(
            mark,
            wall,
            course,
            position,
            OptionalDouble.of(fromM),
            lengthM,
            new Section(0.15, heightM, 1),
            BundleBuilder.TEST_WOOD,
            Moisture.of(0),
            OptionalDouble.empty()));
    return this;
  }

  Site site() {
    return aSite().walls(walls.toArray(Wall[]::new)).build();
  }

  PullOrder order() {
    return PullOrder.of(site(), pieces);
  }

  Precedence precedence() {
    return precedence(Corners.INTERLOCKED);
  }

  Precedence precedence(Corners corners) {
    return Precedence.of(site(), order(), corners);
  }

  /** What a piece needs, as marks in pull order without anything between. */
  String needs(String mark) {
    return needs(mark, Corners.INTERLOCKED);
  }

  String needs(String mark, Corners corners) {
    Precedence precedence = precedence(corners);
    return marks(
        precedence.order().placements().stream()
            .filter(p -> p.piece().mark().equals(mark))
            .flatMap(p -> precedence.needs(p).stream())
            .toList());
  }

  static String marks(List<Placement> some) {
    return String.join("", some.stream().map(p -> p.piece().mark()).toList());
  }
}
