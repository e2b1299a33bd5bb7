package skidway.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import skidway.site.Footprint;
import skidway.site.Point;

class AreaTest {
  private static final String ELL = "POLYGON ((0 0, 10 0, 10 4, 4 4, 4 10, 0 10, 0 0))";

  /** Two by one metre, along the x axis. */
  private static Footprint at(double x, double y) {
    return new Footprint(new Point(x, y), 0, 2, 1);
  }

  @Test
  void containsWhatLiesWithinOrTouchesFromInside() {
    checkContains(at(1, 0.5), true);
    checkContains(at(3, 3.5), true);
    checkContains(at(0.9995, 0.5), true);
    checkContains(at(0.9985, 0.5), false);
    // Its corners lie in both arms of the ell, its middle does not.
    checkContains(new Footprint(new Point(4.5, 4.5), 135, 6, 0.5), false);
    checkContains(at(20, 20), false);
  }

  @Test
  void measuresGapsFromInsideAndOutside() {
    Area ell = Area.of(Wkt.outline(ELL));
    assertThat(ell.gapM(at(8, 8))).isCloseTo(3, within(1e-9));
    assertThat(ell.gapM(at(2, 2))).isZero();
    assertThat(ell.edgeGapM(at(2, 2))).isCloseTo(1, within(1e-9));
    assertThat(ell.edgeGapM(at(14, 7.5))).isCloseTo(Math.hypot(3, 3), within(1e-9));
    assertThat(ell.isEdgeNearer(at(2, 2), 1)).isFalse();
    assertThat(ell.isEdgeNearer(at(2, 2), 1.01)).isTrue();
  }

  @Test
  void tellsHowDeepAnOverlapIs() {
    Area ell = Area.of(Wkt.outline(ELL));
    assertThat(ell.overlapM(at(10.7, 2))).isCloseTo(0.3, within(1e-9));
    assertThat(ell.beyondM(at(9.5, 2))).isCloseTo(0.5, within(1e-9));
    assertThat(ell.overlapM(at(11, 2))).isZero();
    assertThat(ell.beyondM(at(9, 2))).isZero();
    assertThat(ell.meets(at(11, 2))).isFalse();
    assertThat(ell.meets(at(10.99, 2))).isTrue();
  }

  @Test
  void aLineIsMeasuredAlongItsWholeLength() {
    CentreLine line = CentreLine.of(Wkt.points("LINESTRING (0 0, 10 0, 10 10)"));
    assertThat(line.gapM(at(5, 2))).isCloseTo(1.5, within(1e-9));
    assertThat(line.gapM(at(13, 12))).isCloseTo(Math.hypot(2, 1.5), within(1e-9));
    assertThat(line.gapM(at(10, 5))).isZero();
    assertThat(line.isNearer(at(5, 2), 1.5)).isFalse();
    assertThat(line.isNearer(at(5, 2), 1.502)).isTrue();
    assertThat(line.isNearer(at(500, 2), 1.502)).isFalse();
  }

  private static void checkContains(Footprint footprint, boolean expected) {
    assertThat(Area.of(Wkt.outline(ELL)).contains(footprint)).isEqualTo(expected);
  }
}
