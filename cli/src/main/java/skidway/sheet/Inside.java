package skidway.sheet;

import java.util.List;

/** Tells whether a label lies within a polygon, well enough for drawing. */
final class Inside {
  private Inside() {}

  static boolean polygon(List<PagePoint> polygon, Box box) {
    PagePoint middle = box.centre();
    return contains(polygon, new PagePoint(box.x0(), box.y0()))
        && contains(polygon, new PagePoint(box.x1(), box.y0()))
        && contains(polygon, new PagePoint(box.x1(), box.y1()))
        && contains(polygon, new PagePoint(box.x0(), box.y1()))
        && contains(polygon, middle);
  }

  static boolean contains(List<PagePoint> polygon, PagePoint p) {
    boolean inside = false;
    for (int i = 0; i < polygon.size(); i++) {
      PagePoint a = polygon.get(i);
      PagePoint b = polygon.get((i + 1) % polygon.size());
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }
}
