package skidway.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * Finds shortest walks on a board of open and closed cells, an oracle that shares nothing with the
 * visibility graph. Walks go from grid point to grid point by king's moves, along the edges of
 * closed cells too, but not between two closed cells, be it edge or corner.
 */
final class CellWalk {
  /** A way by king's moves is at most this much longer than the straight one: 1 / cos 22.5°. */
  static final double WORST_RATIO = 1 / Math.cos(Math.toRadians(22.5));

  private record Visit(int x, int y, double metres) {}

  private final boolean[][] closed;

  CellWalk(boolean[][] closed) {
    this.closed = closed;
  }

  List<Outline> obstacles() {
    List<Outline> boxes = new ArrayList<>();
    for (int x = 0; x < closed.length; x++) {
      for (int y = 0; y < closed[0].length; y++) {
        if (closed[x][y]) {
          boxes.add(Outline.box(x, y, x + 1, y + 1));
        }
      }
    }
    return boxes;
  }

  double metres(Point from, Point to) {
    double[][] best = new double[closed.length + 1][closed[0].length + 1];
    Arrays.stream(best).forEach(row -> Arrays.fill(row, Double.POSITIVE_INFINITY));
    PriorityQueue<Visit> queue = new PriorityQueue<>(Comparator.comparingDouble(Visit::metres));
    if (isOpen((int) from.x(), (int) from.y())) {
      best[(int) from.x()][(int) from.y()] = 0;
      queue.add(new Visit((int) from.x(), (int) from.y(), 0));
    }
    while (!queue.isEmpty()) {
      Visit at = queue.remove();
      for (int dx = -1; dx <= 1; dx++) {
        for (int dy = -1; dy <= 1; dy++) {
          int x = at.x + dx;
          int y = at.y + dy;
          double metres = at.metres + Math.hypot(dx, dy);
          if (canStep(at.x, at.y, dx, dy) && metres < best[x][y] - 1e-12) {
            best[x][y] = metres;
            queue.add(new Visit(x, y, metres));
          }
        }
      }
    }
    return best[(int) to.x()][(int) to.y()];
  }

  private boolean canStep(int x, int y, int dx, int dy) {
    int lowX = dx < 0 ? x - 1 : x;
    int lowY = dy < 0 ? y - 1 : y;
    if (!isOpen(x + dx, y + dy)) {
      return false;
    } else if (dx != 0 && dy != 0) {
      return !isClosed(lowX, lowY);
    } else if (dx != 0) {
      return !isClosed(lowX, y) || !isClosed(lowX, y - 1);
    }
    return !isClosed(x, lowY) || !isClosed(x - 1, lowY);
  }

  /** Whether somebody can stand at a grid point: no corner where closed cells only touch. */
  private boolean isOpen(int x, int y) {
    if (x < 0 || y < 0 || x > closed.length || y > closed[0].length) {
      return false;
    }
    boolean southWest = isClosed(x - 1, y - 1);
    boolean southEast = isClosed(x, y - 1);
    boolean northWest = isClosed(x - 1, y);
    boolean northEast = isClosed(x, y);
    boolean all = southWest && southEast && northWest && northEast;
    boolean pinch = southWest == northEast && southEast == northWest && southWest != southEast;
    return !all && !pinch;
  }

  /** Cells outside the board count as closed. */
  private boolean isClosed(int x, int y) {
    return x < 0 || y < 0 || x >= closed.length || y >= closed[0].length || closed[x][y];
  }
}
