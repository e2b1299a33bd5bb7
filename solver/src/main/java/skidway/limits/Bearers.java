package skidway.limits;

/**
 * How many bearers a bundle lies on, and how far apart. Common practice: one near each end, the
 * others evenly between, never more than 4 ft apart, so that long timbers do not sag and no bearer
 * takes more than its share.
 *
 * @param spacingM from the middle of one bearer to the next
 * @param endM from the bundle's end to the middle of the first bearer
 */
public record Bearers(int count, double spacingM, double endM) {
  /** Common practice: 4 ft. */
  public static final double MOST_SPACING_M = 1.2192;

  /** Common practice: 1 ft in from the end of a long bundle. */
  private static final double END_M = 0.3048;

  /** Of a short bundle, its fifth part, so that it cannot tip over its bearer. */
  private static final double END_SHARE = 0.2;

  private static final double TOLERANCE_M = 0.001;

  /** Bearers under a bundle of a length. */
  public static Bearers under(double bundleLengthM) {
    double endM = Math.min(END_M, bundleLengthM * END_SHARE);
    double between = bundleLengthM - 2 * endM;
    int gaps = (int) Math.max(1, Math.ceil((between - TOLERANCE_M) / MOST_SPACING_M));
    return new Bearers(gaps + 1, between / gaps, endM);
  }
}
