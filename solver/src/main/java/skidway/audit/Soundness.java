package skidway.audit;

import java.util.stream.DoubleStream;
import skidway.site.Footprint;
import skidway.site.Spot;

/**
 * Tells whether a spot's numbers can be drawn at all. A spot typed by hand may have an endless
 * length or no strip; such a spot is a finding, and the geometry rules pass it over.
 */
final class Soundness {
  /** No building site is wider than this; farther numbers are typing errors. */
  private static final double FARTHEST_M = 100_000;

  private Soundness() {}

  static boolean sound(Spot spot) {
    Footprint f = spot.footprint();
    boolean sizes =
        DoubleStream.of(f.lengthM(), f.widthM(), spot.stripM())
            .allMatch(size -> size > 0 && size <= FARTHEST_M);
    boolean place =
        DoubleStream.of(f.centre().x(), f.centre().y()).allMatch(at -> Math.abs(at) <= FARTHEST_M);
    return sizes && place && Math.abs(f.headingDeg()) <= FARTHEST_M;
  }
}
