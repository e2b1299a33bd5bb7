package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LimitsTest {
  private static final double KG_PER_LB = 0.45359237;
  private static final double M_PER_FT = 0.3048;

  @Test
  void areaLoadAgreesWithPoundsPerSquareFoot() {
    // 40 psf, the floor live load of IRC Table R301.5, is 4,000 lb on 100 ft² and 1.915 kPa.
    double areaM2 = 100 * M_PER_FT * M_PER_FT;
    assertThat(AreaLoad.kpa(4000 * KG_PER_LB, areaM2)).isCloseTo(1.915, within(0.0005));
    assertThat(AreaLoad.massKg(AreaLoad.kpa(350, 2.5), 2.5)).isCloseTo(350, within(1e-9));
    assertThat(AreaLoad.bearingM2(4, 0.6, 0.1)).isCloseTo(3.2, within(1e-12));
  }

  @Test
  void overhangIsHalfTheDifference() {
    assertThat(Overhang.eachEndM(4, 3)).isEqualTo(0.5);
    assertThat(Overhang.eachEndM(3, 4)).isZero();
  }
}
