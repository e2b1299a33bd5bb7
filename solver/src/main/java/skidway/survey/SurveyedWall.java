package skidway.survey;

import skidway.site.Point;

/**
 * An outer wall with its outside face, from which everything is taped. Distances along it count
 * from its left end seen from outside, where its outside face meets the next one's.
 *
 * @param left left end of the outside face
 * @param right its right end
 * @param start where its centre line begins, at the left
 * @param end where that ends
 */
record SurveyedWall(String id, double thicknessM, Point left, Point right, Point start, Point end) {
  double lengthM() {
    return left.distanceTo(right);
  }

  Point along() {
    return right.minus(left).times(1 / lengthM());
  }

  /** Unit vector away from the house. */
  Point outward() {
    return along().turnedLeft().times(-1);
  }

  /** A point some way along the outside face and some way out from it; inwards when negative. */
  Point at(double alongM, double outM) {
    return left.plus(along().times(alongM)).plus(outward().times(outM));
  }

  /**
   * How far the wall's centre line begins from the left end of the outside face, along the wall.
   */
  double startsAtM() {
    return start.minus(left).dot(along());
  }

  double headingDeg() {
    Point way = along();
    return Math.toDegrees(Math.atan2(way.y(), way.x()));
  }
}
