package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.timber.Bundle;

class PickHeightTest {
  /** NIOSH 94-110 (rev. 9/2021) p. 9: 1 - 0.003 per centimetre away from 75; 0 above 175. */
  @ParameterizedTest
  @CsvSource({"0.75, 1", "0, 0.775", "1.75, 0.7", "1.7501, 0", "-0.001, 0", "0.25, 0.85"})
  void factorIsBestAtKnuckleHeight(double heightM, double factor) {
    assertThat(PickHeight.factor(heightM)).isCloseTo(factor, within(1e-9));
  }

  @Test
  void aLayerIsPickedAtItsMiddle() {
    Bundle three =
        aBundle("B1")
            .size(4, 0.6, 0.45)
            .piece("W1", 1, 1, 2, 1)
            .piece("W1", 2, 1, 2, 2)
            .piece("W1", 3, 1, 2, 3)
            .build();
    assertThat(PickHeight.metres(0.089, three, 1)).isCloseTo(0.089 + 0.075, within(1e-12));
    assertThat(PickHeight.metres(0.089, three, 3)).isCloseTo(0.089 + 0.375, within(1e-12));
  }
}
