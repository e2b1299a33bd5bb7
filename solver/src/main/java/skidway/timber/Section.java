package skidway.timber;

/**
 * The cross-section of a timber.
 *
 * @param widthM across the wall
 * @param heightM up the wall
 * @param fill share of the enclosing rectangle that is wood: 1 for a square timber, about 0.79 for
 *     a round log
 */
public record Section(double widthM, double heightM, double fill) {
  public double areaM2() {
    return widthM * heightM * fill;
  }
}
