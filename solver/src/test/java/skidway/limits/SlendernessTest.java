package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SlendernessTest {
  /** By statics, b/h: 3 to 1 tips at a third of gravity, 4 to 1 at a quarter. */
  @Test
  void aBlockTipsAtWidthOverHeight() {
    assertThat(Slenderness.tippingShare(1, 3, 0)).isCloseTo(0.33, within(0.005));
    assertThat(Slenderness.tippingShare(1, 4, 0)).isEqualTo(0.25);
    assertThat(Slenderness.tippingShare(1, 4, 0.25)).isZero();
  }

  @Test
  void onLevelGroundTheLimitStands() {
    assertThat(Slenderness.mostHeightToWidth(3, 0)).isCloseTo(3, within(1e-12));
    assertThat(Slenderness.mostHeightToWidth(3, 0.05))
        .isCloseTo(1 / (1 / 3.0 + 0.05), within(1e-12));
  }

  @Property(seed = "20310505")
  void onASlopeAStackIsAsHardToTipAsOnLevelGround(
      @ForAll @DoubleRange(min = 1, max = 6) double levelRatio,
      @ForAll @DoubleRange(min = 0, max = 0.3) double slope) {
    double ratio = Slenderness.mostHeightToWidth(levelRatio, slope);
    assertThat(Slenderness.tippingShare(1, ratio, slope))
        .isCloseTo(Slenderness.tippingShare(1, levelRatio, 0), within(1e-9));
  }
}
