package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.timber.BearerRow;

class BearerLinesTest {
  /** 4 m on 4 bearers 1.1 m apart, the first 0.35 m in. */
  private static final BearerRow ROW = new BearerRow(4, 1.1, 0.35, 0.9);

  @Test
  void bearersLieSquareAcrossTheBundle() {
    Footprint bundle = new Footprint(new Point(10, 5), 0, 4, 0.6);

    List<LineLoad> lines = BearerLines.under(ROW, bundle, 0.8);

    assertThat(lines).hasSize(4);
    check(lines.get(0), 8.35, 0.225);
    check(lines.get(1), 9.45, 0.275);
    check(lines.get(2), 10.55, 0.275);
    check(lines.get(3), 11.65, 0.225);
  }

  private static void check(LineLoad line, double x, double share) {
    assertThat(line.from().distanceTo(new Point(x, 4.6))).isLessThan(1e-9);
    assertThat(line.to().distanceTo(new Point(x, 5.4))).isLessThan(1e-9);
    assertThat(line.share()).isCloseTo(share, within(1e-9));
  }

  @Test
  void theyTurnWithTheBundle() {
    Footprint bundle = new Footprint(new Point(10, 5), 90, 4, 0.6);
    LineLoad first = BearerLines.under(ROW, bundle, 0.8).get(0);

    assertThat(first.from().distanceTo(new Point(10.4, 3.35))).isLessThan(1e-9);
    assertThat(first.to().distanceTo(new Point(9.6, 3.35))).isLessThan(1e-9);
  }

  @Test
  void aBearerCountsAsFarAsItReachesAndTheBundleAtLeast() {
    assertThat(BearerLines.lengthM(ROW, 0.6, 0.1)).isCloseTo(0.8, within(1e-12));
    assertThat(BearerLines.lengthM(ROW, 0.6, 0.2)).isCloseTo(0.9, within(1e-12));
    assertThat(BearerLines.lengthM(ROW, 1.0, 0.2)).isCloseTo(1.0, within(1e-12));
    assertThat(BearerLines.lengthM(ROW, 0.6, 0)).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void aRackStandsOnRailsAlongItsLongSides() {
    List<LineLoad> rails = BearerLines.rails(new Footprint(new Point(3, 2), 0, 1.8, 0.9));

    assertThat(rails)
        .containsExactly(
            new LineLoad(new Point(2.1, 2.45), new Point(3.9, 2.45), 0.5),
            new LineLoad(new Point(2.1, 1.55), new Point(3.9, 1.55), 0.5));
  }
}
