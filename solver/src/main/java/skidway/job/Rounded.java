package skidway.job;

import java.math.BigDecimal;
import java.math.RoundingMode;
import skidway.units.Measure;

/** Rounds figures for the plan file, so that it shows no digits that mean nothing. */
final class Rounded {
  private Rounded() {}

  /**
   * A figure that a place is drawn from. Rounding moves both of two neighbours, and what just kept
   * its distance must still do so within the millimetre that rules allow.
   */
  static BigDecimal place(double metres) {
    return to(4, metres);
  }

  static BigDecimal metres(double metres) {
    return to(3, metres);
  }

  static BigDecimal kg(double kg) {
    return to(2, kg);
  }

  static BigDecimal seconds(double seconds) {
    return to(1, seconds);
  }

  static BigDecimal degrees(double degrees) {
    return to(4, degrees);
  }

  static BigDecimal of(Measure measure, double si) {
    return switch (measure) {
      case LENGTH, PRESSURE, SPEED -> to(3, si);
      case MASS -> kg(si);
      case DURATION, FORCE, MOMENT, VOLTAGE -> seconds(si);
      case ANGLE, RATIO -> to(4, si);
      case COUNT -> to(0, si);
    };
  }

  private static BigDecimal to(int places, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("A figure of a plan must be finite, found " + value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN);
    return new BigDecimal(rounded.stripTrailingZeros().toPlainString());
  }
}
