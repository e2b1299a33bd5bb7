package skidway.audit.walk;

import java.util.Arrays;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import skidway.audit.plane.Polygon;
import skidway.audit.plane.Segment;
import skidway.site.Footprint;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * A square grid over the site's bounding box with one closed cell more on every side. A cell stands
 * for its middle: it is closed when a person's middle cannot be there.
 *
 * <p>Marks are bits, so that one array tells the site's own obstacles from stacks.
 */
final class WalkGrid {
  /** Distances are compared with this slack, so that a way exactly wide enough stays open. */
  private static final double SLACK_M = 1e-9;

  private final double cellM;
  private final double x0;
  private final double y0;
  private final int columns;
  private final int rows;

  WalkGrid(Outline area, double cellM) {
    this.cellM = cellM;
    double minX = area.corners().stream().mapToDouble(Point::x).min().orElseThrow();
    double maxX = area.corners().stream().mapToDouble(Point::x).max().orElseThrow();
    double minY = area.corners().stream().mapToDouble(Point::y).min().orElseThrow();
    double maxY = area.corners().stream().mapToDouble(Point::y).max().orElseThrow();
    x0 = minX - cellM;
    y0 = minY - cellM;
    columns = (int) Math.ceil((maxX - minX) / cellM) + 2;
    rows = (int) Math.ceil((maxY - minY) / cellM) + 2;
  }

  int size() {
    return columns * rows;
  }

  int columns() {
    return columns;
  }

  double cellM() {
    return cellM;
  }

  Point middle(int cell) {
    return new Point(x(cell % columns), y(cell / columns));
  }

  private double x(int column) {
    return x0 + (column + 0.5) * cellM;
  }

  private double y(int row) {
    return y0 + (row + 0.5) * cellM;
  }

  /** Marks everything nearer to a rectangle than a distance. */
  void markNear(byte[] marks, byte mark, Footprint f, double withinM) {
    markNear(marks, mark, f.centre(), f.along(), f.lengthM() / 2, f.widthM() / 2, withinM);
  }

  /** Marks everything nearer to a polygon's boundary than a distance. */
  void markNear(byte[] marks, byte mark, Polygon polygon, double withinM) {
    for (Segment s : polygon.sides()) {
      double length = s.a().distanceTo(s.b());
      if (length > 0) {
        Point along = s.b().minus(s.a()).times(1 / length);
        Point centre = s.a().plus(s.b()).times(0.5);
        markNear(marks, mark, centre, along, length / 2, 0, withinM);
      }
    }
  }

  private void markNear(
      byte[] marks,
      byte mark,
      Point centre,
      Point along,
      double halfLengthM,
      double halfWidthM,
      double withinM) {
    double reachX = halfLengthM * Math.abs(along.x()) + halfWidthM * Math.abs(along.y()) + withinM;
    double reachY = halfLengthM * Math.abs(along.y()) + halfWidthM * Math.abs(along.x()) + withinM;
    int lastColumn = column(centre.x() + reachX);
    int lastRow = row(centre.y() + reachY);
    double limit = Math.max(0, withinM - SLACK_M);
    for (int row = row(centre.y() - reachY); row <= lastRow; row++) {
      double dy = y(row) - centre.y();
      for (int column = column(centre.x() - reachX); column <= lastColumn; column++) {
        double dx = x(column) - centre.x();
        double beyondEnd = Math.abs(dx * along.x() + dy * along.y()) - halfLengthM;
        double beyondSide = Math.abs(dy * along.x() - dx * along.y()) - halfWidthM;
        double u = Math.max(0, beyondEnd);
        double v = Math.max(0, beyondSide);
        boolean inside = Math.max(beyondEnd, beyondSide) < -SLACK_M;
        if (inside || u * u + v * v < limit * limit) {
          marks[row * columns + column] |= mark;
        }
      }
    }
  }

  /** Marks everything inside a polygon, row by row between its crossings. */
  void markInside(byte[] marks, byte mark, Polygon polygon) {
    forInside(polygon, (from, to) -> orInto(marks, from, to, mark));
  }

  /** Takes a mark off everything inside a polygon. */
  void clearInside(byte[] marks, byte mark, Polygon polygon) {
    forInside(
        polygon,
        (from, to) -> {
          for (int cell = from; cell < to; cell++) {
            marks[cell] &= (byte) ~mark;
          }
        });
  }

  private static void orInto(byte[] marks, int from, int to, byte mark) {
    for (int cell = from; cell < to; cell++) {
      marks[cell] |= mark;
    }
  }

  /** A run of cells in one row, the last one not counted. */
  private interface Run {
    void take(int from, int to);
  }

  private void forInside(Polygon polygon, Run run) {
    for (int row = 1; row < rows - 1; row++) {
      double y = y(row);
      double[] crossings =
          polygon.sides().stream()
              .filter(s -> (s.a().y() > y) != (s.b().y() > y))
              .mapToDouble(
                  s ->
                      s.a().x()
                          + (y - s.a().y()) / (s.b().y() - s.a().y()) * (s.b().x() - s.a().x()))
              .sorted()
              .toArray();
      for (int i = 0; i + 1 < crossings.length; i += 2) {
        run.take(
            row * columns + firstFrom(crossings[i]), row * columns + firstFrom(crossings[i + 1]));
      }
    }
  }

  /** The first column whose middle is not left of x, within the closed rim. */
  private int firstFrom(double x) {
    return clamp((int) Math.ceil((x - x0) / cellM - 0.5), 1, columns - 1);
  }

  /** The cells whose middles are within a distance of a point and fulfil a condition. */
  Cells near(Point p, double withinM, Predicate<Point> wanted) {
    int lastRow = row(p.y() + withinM);
    int lastColumn = column(p.x() + withinM);
    int firstColumn = column(p.x() - withinM);
    return Cells.of(
        IntStream.rangeClosed(row(p.y() - withinM), lastRow)
            .flatMap(
                row ->
                    IntStream.rangeClosed(firstColumn, lastColumn)
                        .map(column -> row * columns + column))
            .filter(cell -> middle(cell).distanceTo(p) <= withinM && wanted.test(middle(cell))));
  }

  private int column(double x) {
    return clamp((int) Math.floor((x - x0) / cellM), 0, columns - 1);
  }

  private int row(double y) {
    return clamp((int) Math.floor((y - y0) / cellM), 0, rows - 1);
  }

  private static int clamp(int value, int least, int most) {
    return Math.max(least, Math.min(most, value));
  }

  byte[] allMarked(byte mark) {
    byte[] marks = new byte[size()];
    Arrays.fill(marks, mark);
    return marks;
  }
}
