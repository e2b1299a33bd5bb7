package skidway.limits;

import java.util.Optional;
import skidway.timber.BearerRow;

/**
 * Lays bearers under bundles: one near each end, the others evenly between (common practice). Each
 * bearer is taken to carry the part of the bundle that is nearer to it than to any other.
 *
 * @param timberM width of one bearer, the side that lies on the ground
 * @param mostSpacingM farthest from one bearer to the next
 * @param leastSpacingM nearest from one bearer to the next
 * @param proudM how far a bearer may stand out beyond the bundle, each side
 */
public record Bearers(double timberM, double mostSpacingM, double leastSpacingM, double proudM) {
  /** Common practice: 1 ft in from the end of a long bundle. */
  private static final double END_M = 0.3048;

  /** Of a short bundle, its fifth part, so that it cannot tip over its bearer. */
  private static final double END_SHARE = 0.2;

  private static final double TOLERANCE_M = 0.001;

  /** Kept back, so that figures rounded for a plan file never press harder than they may. */
  private static final double RESERVE = 1.0005;

  /** A longer bearer is longer by half a foot or its multiple, so that few lengths are cut. */
  private static final double CUT_M = 0.1524;

  /** As few bearers as the spacing allows, standing out by a reach on both sides. */
  public BearerRow fewest(double bundleLengthM, double bundleWidthM, double reachM) {
    return row(fewest(bundleLengthM), bundleLengthM, bundleWidthM + 2 * reachM);
  }

  /**
   * The bearers with the least timber in them that spread a mass well enough over the ground.
   *
   * @return none if bearers as close and as long as may be still press too hard
   */
  public Optional<BearerRow> onGround(
      double bundleLengthM, double bundleWidthM, double massKg, double allowedKpa) {
    BearerRow best = null;
    for (int count = fewest(bundleLengthM); count <= most(bundleLengthM); count++) {
      BearerRow bare = row(count, bundleLengthM, bundleWidthM);
      double pressKpa = kpa(bare, bundleLengthM, massKg) * RESERVE;
      double neededM = bundleWidthM * pressKpa / allowedKpa;
      double lengthM = cut(bundleWidthM, neededM);
      boolean enough = neededM <= lengthM + 1e-9;
      if (enough && (best == null || count * lengthM < best.count() * best.lengthM() - 1e-9)) {
        best = row(count, bundleLengthM, lengthM);
      }
    }
    return Optional.ofNullable(best);
  }

  /** The most that any bearers allowed here can spread over the ground, kg. */
  public double mostOnGroundKg(double bundleLengthM, double bundleWidthM, double allowedKpa) {
    double mostKg = 0;
    for (int count = fewest(bundleLengthM); count <= most(bundleLengthM); count++) {
      BearerRow row = row(count, bundleLengthM, bundleWidthM + 2 * proudM);
      mostKg = Math.max(mostKg, allowedKpa / (RESERVE * kpa(row, bundleLengthM, 1)));
    }
    return mostKg;
  }

  /** The most that bearers which lie there already spread over the ground, kg. */
  public double mostOnGroundKg(BearerRow row, double bundleLengthM, double allowedKpa) {
    return allowedKpa / (RESERVE * kpa(row, bundleLengthM, 1));
  }

  /** Pressure under the bearer that carries most, kPa. */
  public double kpa(BearerRow row, double bundleLengthM, double massKg) {
    double share = Math.max(endShare(row, bundleLengthM), midShare(row, bundleLengthM));
    return AreaLoad.kpa(massKg * share, timberM * row.lengthM());
  }

  /** Share of the bundle's mass on the first and on the last bearer. */
  public static double endShare(BearerRow row, double bundleLengthM) {
    return (row.endM() + row.spacingM() / 2) / bundleLengthM;
  }

  /** Share of the bundle's mass on each bearer between the first and the last. */
  public static double midShare(BearerRow row, double bundleLengthM) {
    return row.count() > 2 ? row.spacingM() / bundleLengthM : 0;
  }

  private static BearerRow row(int count, double bundleLengthM, double bearerLengthM) {
    double endM = endM(bundleLengthM);
    return new BearerRow(count, (bundleLengthM - 2 * endM) / (count - 1), endM, bearerLengthM);
  }

  private int fewest(double bundleLengthM) {
    double betweenM = bundleLengthM - 2 * endM(bundleLengthM);
    return 1 + (int) Math.max(1, Math.ceil((betweenM - TOLERANCE_M) / mostSpacingM));
  }

  private int most(double bundleLengthM) {
    double betweenM = bundleLengthM - 2 * endM(bundleLengthM);
    int closest = 1 + (int) Math.floor((betweenM + TOLERANCE_M) / leastSpacingM);
    return Math.max(fewest(bundleLengthM), closest);
  }

  private static double endM(double bundleLengthM) {
    return Math.min(END_M, bundleLengthM * END_SHARE);
  }

  /** The bundle's width, and as many cuts more as are needed and allowed. */
  private double cut(double bundleWidthM, double neededM) {
    double cuts = Math.ceil(Math.max(0, neededM - bundleWidthM) / CUT_M - 1e-9);
    return Math.min(bundleWidthM + 2 * proudM, bundleWidthM + cuts * CUT_M);
  }
}
