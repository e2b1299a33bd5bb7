package skidway.limits;

/**
 * How high a stack may be for its width. A block tips when it is pushed to the side harder than
 * width over height; ground that falls to the side takes its slope off that (statics).
 */
public final class Slenderness {
  private Slenderness() {}

  /**
   * The sideways acceleration that tips a free-standing block, as a share of gravity; 0 or less
   * where it falls by itself.
   *
   * @param slope of what it stands on, fall over distance
   */
  public static double tippingShare(double widthM, double heightM, double slope) {
    return widthM / heightM - slope;
  }

  /**
   * Most heights to a width on a slope: as hard to tip as on level ground at the limit there.
   *
   * @param levelRatio the limit on level ground
   */
  public static double mostHeightToWidth(double levelRatio, double slope) {
    return 1 / (1 / levelRatio + slope);
  }
}
