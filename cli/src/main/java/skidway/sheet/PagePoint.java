package skidway.sheet;

/** A point on paper: millimetres to the right and down from the drawing's upper left corner. */
record PagePoint(double x, double y) {
  double distanceTo(PagePoint other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** The point a share of the way to another one. */
  PagePoint towards(PagePoint other, double share) {
    return new PagePoint(x + (other.x - x) * share, y + (other.y - y) * share);
  }
}
