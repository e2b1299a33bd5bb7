package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlingTensionTest {
  /**
   * kwrs.com, "Determining the lifting load capacity of a sling": 1000 lb on two slings; 30 degrees
   * by statics. The factor at 60 degrees is printed cut off.
   */
  @ParameterizedTest
  @CsvSource({"90, 1.000, 500", "60, 1.154, 577", "45, 1.414, 707", "30, 2.000, 1000"})
  void agreesWithThePrintedFactors(double angleDeg, double factor, double eachOf1000) {
    assertThat(SlingTension.factor(angleDeg)).isCloseTo(factor, within(0.001));
    assertThat(SlingTension.legKg(1000, angleDeg)).isCloseTo(eachOf1000, within(0.5));
  }
}
