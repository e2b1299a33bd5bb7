package skidway.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Finds the point on a polygon's edge where a leader to a label best begins. */
final class Rim {
  private Rim() {}

  static PagePoint nearest(List<PagePoint> polygon, PagePoint to) {
    return IntStream.range(0, polygon.size())
        .mapToObj(i -> onEdge(polygon.get(i), polygon.get((i + 1) % polygon.size()), to))
        .min(Comparator.comparingDouble(to::distanceTo))
        .orElseThrow();
  }

  private static PagePoint onEdge(PagePoint a, PagePoint b, PagePoint to) {
    double lengthMm = a.distanceTo(b);
    if (!(lengthMm > 0)) {
      return a;
    }
    double along = (to.x() - a.x()) * (b.x() - a.x()) + (to.y() - a.y()) * (b.y() - a.y());
    return a.towards(b, Math.max(0, Math.min(1, along / (lengthMm * lengthMm))));
  }
}
