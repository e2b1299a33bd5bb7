package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.units.UnitSystem;

class ScaleTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          METRIC |  10    |   50 | 1:50
          METRIC |  10.01 |   75 | 1:75
          METRIC |  15    |   75 | 1:75
          METRIC |  30    |  150 | 1:150
          METRIC |  30.1  |  200 | 1:200
          METRIC |  79    |  400 | 1:400
          METRIC |  81    |  500 | 1:500
          METRIC | 900    | 5000 | 1:5000
          US     |   1    |   48 | 1/4" = 1'
          US     |   9.7  |   64 | 3/16" = 1'
          US     |  19    |   96 | 1/8" = 1'
          US     |  25    |  128 | 3/32" = 1'
          US     |  26    |  192 | 1/16" = 1'
          US     |  40    |  240 | 1" = 20'
          US     | 200    | 1200 | 1" = 100'
          US     | 400    | 2400 | 1" = 200'
          """)
  void largestRoundScaleThatFits(UnitSystem units, double widthM, int ratio, String words) {
    Scale scale = Scale.toFit(units, widthM, 1, 200, 200);
    assertThat(scale.ratio()).isEqualTo(ratio);
    assertThat(scale).hasToString(words);
  }

  @Test
  void theNarrowerSideDecides() {
    assertThat(Scale.toFit(UnitSystem.METRIC, 1, 30, 200, 100).ratio()).isEqualTo(300);
  }

  @Test
  void aScreenIsFilled() {
    assertThat(Scale.filling(10.05, 1, 100, 100).ratio()).isEqualTo(101);
  }
}
