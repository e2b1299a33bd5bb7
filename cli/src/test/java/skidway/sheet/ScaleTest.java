package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {
  @ParameterizedTest
  @CsvSource({
    "10, 50",
    "10.01, 75",
    "15, 75",
    "30, 150",
    "30.1, 200",
    "79, 400",
    "81, 500",
    "900, 5000"
  })
  void largestRoundScaleThatFits(double widthM, int ratio) {
    assertThat(Scale.toFit(widthM, 1, 200, 200).ratio()).isEqualTo(ratio);
  }

  @Test
  void theNarrowerSideDecides() {
    assertThat(Scale.toFit(1, 30, 200, 100).ratio()).isEqualTo(300);
  }
}
