package skidway.site;

import java.util.List;

/**
 * A rectangle on the ground that may be turned: what a bundle, a stack or a truck covers.
 *
 * <pre>
 *        heading →
 *   +-------------------+
 *   |      centre       | widthM
 *   +-------------------+
 *          lengthM
 * </pre>
 *
 * @param centre middle of the rectangle
 * @param headingDeg direction of the length, degrees counter-clockwise from the x axis
 */
public record Footprint(Point centre, double headingDeg, double lengthM, double widthM) {
  public Footprint {
    if (!(lengthM > 0) || !(widthM > 0)) {
      throw new IllegalArgumentException(
          "A footprint needs a length and width above 0, found " + lengthM + " by " + widthM);
    }
  }

  public Point along() {
    return Point.unit(headingDeg);
  }

  public double areaM2() {
    return lengthM * widthM;
  }

  /** The four corners, counter-clockwise, starting at the back right one seen along the heading. */
  public Outline outline() {
    Point a = along().times(lengthM / 2);
    Point b = along().turnedLeft().times(widthM / 2);
    return new Outline(
        List.of(
            centre.minus(a).minus(b),
            centre.plus(a).minus(b),
            centre.plus(a).plus(b),
            centre.minus(a).plus(b)));
  }

  /** The same place, covered by something of another size. */
  public Footprint resized(double newLengthM, double newWidthM) {
    return new Footprint(centre, headingDeg, newLengthM, newWidthM);
  }
}
