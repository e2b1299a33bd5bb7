package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import skidway.timber.BearerRow;

class BearersTest {
  private static final double FOOT = 0.3048;
  private static final Bearers FOUR_BY_FOURS = new Bearers(0.089, 4 * FOOT, 16 * FOOT / 12, FOOT);

  @Test
  void aLongBundleLiesOnEvenBearersNotMoreThanFourFeetApart() {
    BearerRow row = FOUR_BY_FOURS.fewest(16 * FOOT, 2 * FOOT, 0);

    assertThat(row.count()).isEqualTo(5);
    assertThat(row.spacingM()).isCloseTo(3.5 * FOOT, within(1e-9));
    assertThat(row.lengthM()).isCloseTo(2 * FOOT, within(1e-9));
  }

  @Test
  void aSpacingOfJustFourFeetNeedsNoBearerMore() {
    assertThat(FOUR_BY_FOURS.fewest(6 * FOOT, 1, 0).count()).isEqualTo(2);
    assertThat(FOUR_BY_FOURS.fewest(6.1 * FOOT, 1, 0).count()).isEqualTo(3);
  }

  @Test
  void aShortBundleKeepsItsBearersInside() {
    BearerRow row = FOUR_BY_FOURS.fewest(0.5, 0.5, 0);

    assertThat(row.count()).isEqualTo(2);
    assertThat(row.endM()).isCloseTo(0.1, within(1e-9));
  }

  @Property(seed = "20310505")
  void bearersCarryTheWholeBundle(@ForAll @DoubleRange(min = 0.05, max = 25) double lengthM) {
    BearerRow row = FOUR_BY_FOURS.fewest(lengthM, 1, 0);
    double shares =
        2 * Bearers.endShare(row, lengthM) + (row.count() - 2) * Bearers.midShare(row, lengthM);

    assertThat(row.spacingM()).isLessThanOrEqualTo(4 * FOOT + 0.002);
    assertThat(shares).isCloseTo(1, within(1e-9));
  }

  /** 1000 kg, 4 m on 5 bearers: 0.8474 m apart, the middle ones carry 0.21185 each. */
  @Test
  void pressureIsThatUnderTheBearerThatCarriesMost() {
    BearerRow row = new BearerRow(5, 0.8476, 0.3048, 0.6);

    assertThat(FOUR_BY_FOURS.kpa(row, 4, 1000))
        .isCloseTo(1000 * 0.2119 * 9.80665 / 1000 / (0.089 * 0.6), within(0.01));
  }

  @Test
  void softGroundTakesMoreAndLongerBearers() {
    BearerRow firm = FOUR_BY_FOURS.onGround(4, 0.6, 1000, 60).orElseThrow();
    BearerRow soft = FOUR_BY_FOURS.onGround(4, 0.6, 1000, 15).orElseThrow();

    assertThat(firm).isEqualTo(FOUR_BY_FOURS.fewest(4, 0.6, 0));
    assertThat(soft.count() * soft.lengthM()).isGreaterThan(firm.count() * firm.lengthM());
  }

  @Property(seed = "20310505")
  void chosenBearersKeepThePressureAndNoneIsChosenOnlyAboveTheMost(
      @ForAll @DoubleRange(min = 0.3, max = 8) double lengthM,
      @ForAll @DoubleRange(min = 0.2, max = 1.5) double widthM,
      @ForAll @DoubleRange(min = 10, max = 8000) double massKg,
      @ForAll @DoubleRange(min = 5, max = 150) double allowedKpa) {
    double mostKg = FOUR_BY_FOURS.mostOnGroundKg(lengthM, widthM, allowedKpa);

    FOUR_BY_FOURS
        .onGround(lengthM, widthM, massKg, allowedKpa)
        .ifPresentOrElse(
            row -> {
              assertThat(FOUR_BY_FOURS.kpa(row, lengthM, massKg))
                  .isLessThanOrEqualTo(allowedKpa * (1 + 1e-9));
              assertThat(row.lengthM()).isBetween(widthM, widthM + 2 * FOOT + 1e-9);
            },
            () -> assertThat(massKg).isGreaterThan(mostKg * (1 - 1e-9)));
  }
}
