package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Cuts off what lies beyond a box: things on a site may reach farther than its map. */
final class Clip {
  private Clip() {}

  /** The part of a polygon without notches within a box; empty if there is none. */
  static List<PagePoint> polygon(List<PagePoint> polygon, Box box) {
    List<PagePoint> left = half(polygon, p -> p.x() - box.x0());
    List<PagePoint> right = half(left, p -> box.x1() - p.x());
    List<PagePoint> top = half(right, p -> p.y() - box.y0());
    return half(top, p -> box.y1() - p.y());
  }

  /** The part of a line within a box: its two ends, or nothing. */
  static List<PagePoint> line(PagePoint from, PagePoint to, Box box) {
    List<PagePoint> cut = polygon(List.of(from, to), box);
    return cut.isEmpty() ? cut : List.of(cut.get(0), cut.get(1));
  }

  /**
   * @param depth how far within a point lies; negative beyond the edge
   */
  private static List<PagePoint> half(List<PagePoint> polygon, ToDoubleFunction<PagePoint> depth) {
    List<PagePoint> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      PagePoint a = polygon.get(i);
      PagePoint b = polygon.get((i + 1) % polygon.size());
      double da = depth.applyAsDouble(a);
      double db = depth.applyAsDouble(b);
      if (da >= 0) {
        kept.add(a);
      }
      if (da >= 0 != db >= 0) {
        kept.add(a.towards(b, da / (da - db)));
      }
    }
    return kept;
  }
}
