package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BearersTest {
  private static final double FOOT = 0.3048;

  @Test
  void sixteenFeetLieOnFive() {
    Bearers bearers = Bearers.under(16 * FOOT);
    assertThat(bearers.count()).isEqualTo(5);
    assertThat(bearers.spacingM()).isCloseTo(3.5 * FOOT, within(1e-9));
  }

  @Test
  void exactlyFourFeetBetweenTwoNeedNoThird() {
    assertThat(Bearers.under(6 * FOOT).count()).isEqualTo(2);
    assertThat(Bearers.under(6.1 * FOOT).count()).isEqualTo(3);
  }

  @Test
  void aShortOneStillLiesOnTwo() {
    Bearers bearers = Bearers.under(0.5);
    assertThat(bearers.count()).isEqualTo(2);
    assertThat(bearers.spacingM()).isCloseTo(0.3, within(1e-9));
  }

  @Property(seed = "20310505")
  void neverFurtherApartThanTheMostAndAllUnderTheBundle(
      @ForAll @DoubleRange(min = 0.1, max = 20) double lengthM) {
    Bearers bearers = Bearers.under(lengthM);
    assertThat(bearers.count()).isGreaterThanOrEqualTo(2);
    assertThat(bearers.spacingM()).isLessThanOrEqualTo(Bearers.MOST_SPACING_M + 0.002);
    double covered = 2 * bearers.endM() + (bearers.count() - 1) * bearers.spacingM();
    assertThat(covered).isCloseTo(lengthM, within(1e-9));
  }
}
