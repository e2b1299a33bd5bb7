package skidway.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongBinaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * Answers which points of one connected walkable area see each other: the straight way between them
 * does not leave the area, though it may touch an obstacle or run along one.
 *
 * <p>Corners are numbered round the outer ring and the holes, always with the free side on the
 * left. Coordinates are whole numbers of the {@link Grid}, all tests are exact. A question costs
 * one pass over all edges.
 */
final class FreeArea {
  private final IndexedPointInAreaLocator locator;
  private final long[] x;
  private final long[] y;
  private final int[] next;
  private final int[] previous;
  private final int[] bends;

  /** The box round the edge from each corner to the next. */
  private final long[] west;

  private final long[] east;
  private final long[] south;
  private final long[] north;

  private @Nullable List<SightLine> sightLines;

  FreeArea(Polygon polygon) {
    locator = new IndexedPointInAreaLocator(polygon);
    int size = polygon.getNumPoints() - 1 - polygon.getNumInteriorRing();
    x = new long[size];
    y = new long[size];
    next = new int[size];
    previous = new int[size];
    int at = addRing(polygon.getExteriorRing(), true, 0);
    for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
      at = addRing(polygon.getInteriorRingN(hole), false, at);
    }
    bends = findBends();
    west = ofEdges(x, Math::min);
    east = ofEdges(x, Math::max);
    south = ofEdges(y, Math::min);
    north = ofEdges(y, Math::max);
  }

  private long[] ofEdges(long[] coordinate, LongBinaryOperator ofBothEnds) {
    return IntStream.range(0, coordinate.length)
        .mapToLong(p -> ofBothEnds.applyAsLong(coordinate[p], coordinate[next[p]]))
        .toArray();
  }

  private int addRing(LinearRing ring, boolean outer, int from) {
    Coordinate[] corners = ring.getCoordinates();
    int count = corners.length - 1;
    boolean turned = Orientation.isCCW(corners) != outer;
    for (int i = 0; i < count; i++) {
      Coordinate corner = corners[turned ? count - i : i];
      x[from + i] = Math.round(corner.x);
      y[from + i] = Math.round(corner.y);
      next[from + i] = from + (i + 1) % count;
      previous[from + i] = from + (i + count - 1) % count;
    }
    return from + count;
  }

  private int[] findBends() {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      if (side(x[previous[i]], y[previous[i]], x[i], y[i], x[next[i]], y[next[i]]) < 0) {
        found.add(i);
      }
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The corners at which a shortest path may bend: those that poke into the area. */
  int[] bends() {
    return bends.clone();
  }

  /** The ways between bends, computed when first asked for. */
  List<SightLine> sightLines() {
    if (sightLines == null) {
      sightLines = SightLine.of(this);
    }
    return sightLines;
  }

  long x(int corner) {
    return x[corner];
  }

  long y(int corner) {
    return y[corner];
  }

  boolean contains(long px, long py) {
    return locator.locate(new Coordinate(px, py)) != Location.EXTERIOR;
  }

  /** Whether a shortest path coming from a point may go on round a corner: it only grazes it. */
  boolean grazes(long px, long py, int corner) {
    int before = side(px, py, x[corner], y[corner], x[previous[corner]], y[previous[corner]]);
    int after = side(px, py, x[corner], y[corner], x[next[corner]], y[next[corner]]);
    return before * after >= 0;
  }

  /** Whether two points of the area see each other. */
  boolean sees(long ax, long ay, long bx, long by) {
    long westmost = Math.min(ax, bx);
    long eastmost = Math.max(ax, bx);
    long southmost = Math.min(ay, by);
    long northmost = Math.max(ay, by);
    for (int p = 0; p < x.length; p++) {
      boolean isFar =
          east[p] < westmost || west[p] > eastmost || north[p] < southmost || south[p] > northmost;
      if (!isFar && blocks(p, ax, ay, bx, by)) {
        return false;
      }
    }
    return true;
  }

  /** Whether the edge from corner p, or the corner itself, stands in the way from a to b. */
  private boolean blocks(int p, long ax, long ay, long bx, long by) {
    int q = next[p];
    int sideP = side(ax, ay, bx, by, x[p], y[p]);
    int sideQ = side(ax, ay, bx, by, x[q], y[q]);
    if (sideP * sideQ > 0) {
      return false;
    }
    if (sideP == 0 && within(x[p], y[p], ax, ay, bx, by) && leavesAt(p, ax, ay, bx, by)) {
      return true;
    }
    int sideA = side(x[p], y[p], x[q], y[q], ax, ay);
    int sideB = side(x[p], y[p], x[q], y[q], bx, by);
    if (sideA == 0 && isInside(ax, ay, p, q)) {
      return sideB < 0;
    }
    if (sideB == 0 && isInside(bx, by, p, q)) {
      return sideA < 0;
    }
    return sideP * sideQ < 0 && sideA * sideB < 0;
  }

  /** Whether the way from a to b, which passes corner p, is outside just before or after it. */
  private boolean leavesAt(int p, long ax, long ay, long bx, long by) {
    boolean ahead = x[p] != bx || y[p] != by;
    boolean behind = x[p] != ax || y[p] != ay;
    return (ahead && !isFree(p, bx - ax, by - ay)) || (behind && !isFree(p, ax - bx, ay - by));
  }

  /** Whether a direction from a corner leads into the area or along one of the corner's edges. */
  private boolean isFree(int p, long dx, long dy) {
    long outX = x[next[p]] - x[p];
    long outY = y[next[p]] - y[p];
    long backX = x[previous[p]] - x[p];
    long backY = y[previous[p]] - y[p];
    boolean pokesIn = turn(-backX, -backY, outX, outY) < 0;
    return pokesIn
        ? !(turn(backX, backY, dx, dy) > 0 && turn(dx, dy, outX, outY) > 0)
        : turn(outX, outY, dx, dy) >= 0 && turn(dx, dy, backX, backY) >= 0;
  }

  /** Whether a point on the line of an edge lies on the edge and not at its ends. */
  private boolean isInside(long px, long py, int p, int q) {
    return within(px, py, x[p], y[p], x[q], y[q])
        && (px != x[p] || py != y[p])
        && (px != x[q] || py != y[q]);
  }

  private static boolean within(long px, long py, long ax, long ay, long bx, long by) {
    return px >= Math.min(ax, bx)
        && px <= Math.max(ax, bx)
        && py >= Math.min(ay, by)
        && py <= Math.max(ay, by);
  }

  /** 1 if c lies left of the way from a to b, -1 if right, 0 if on its line. */
  private static int side(long ax, long ay, long bx, long by, long cx, long cy) {
    return turn(bx - ax, by - ay, cx - ax, cy - ay);
  }

  private static int turn(long ax, long ay, long bx, long by) {
    return Long.signum(ax * by - ay * bx);
  }
}
