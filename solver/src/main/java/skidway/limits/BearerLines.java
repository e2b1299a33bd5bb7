package skidway.limits;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.timber.BearerRow;

/**
 * The lines on which a stack bears, seen from above. A bundle lies on bearers square across it, a
 * rack stands on two rails along its long sides.
 */
public final class BearerLines {
  private BearerLines() {}

  /**
   * Length of a bearer that counts, metres: no more than the bundle and a reach on both sides, no
   * less than the bundle.
   */
  public static double lengthM(BearerRow row, double bundleWidthM, double reachM) {
    return Math.min(Math.max(bundleWidthM, row.lengthM()), bundleWidthM + 2 * reachM);
  }

  /**
   * The bearers beneath a bundle, from its back end to its front.
   *
   * @param row not {@link BearerRow#NONE}
   * @param bundle what the bundle covers; its width plays no part
   * @param lengthM of each line, centred on the bundle's axis
   */
  public static List<LineLoad> under(BearerRow row, Footprint bundle, double lengthM) {
    return IntStream.range(0, row.count())
        .mapToObj(
            i -> {
              boolean end = i == 0 || i == row.count() - 1;
              double fromBackM = row.endM() + i * row.spacingM();
              return across(
                  bundle,
                  fromBackM - bundle.lengthM() / 2,
                  lengthM,
                  end
                      ? Bearers.endShare(row, bundle.lengthM())
                      : Bearers.midShare(row, bundle.lengthM()));
            })
        .toList();
  }

  /** The two rails of a rack. */
  public static List<LineLoad> rails(Footprint rack) {
    Point ahead = rack.along().times(rack.lengthM() / 2);
    Point left = rack.along().turnedLeft().times(rack.widthM() / 2);
    return Stream.of(rack.centre().plus(left), rack.centre().minus(left))
        .map(middle -> new LineLoad(middle.minus(ahead), middle.plus(ahead), 0.5))
        .toList();
  }

  private static LineLoad across(Footprint bundle, double aheadM, double lengthM, double share) {
    Point middle = bundle.centre().plus(bundle.along().times(aheadM));
    Point half = bundle.along().turnedLeft().times(lengthM / 2);
    return new LineLoad(middle.minus(half), middle.plus(half), share);
  }
}
