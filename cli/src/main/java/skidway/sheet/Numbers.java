package skidway.sheet;

/** Writes coordinates the same way on every machine: at most two decimals, a point, no exponent. */
final class Numbers {
  private Numbers() {}

  static String of(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("A coordinate must be finite, found " + value);
    }
    long hundredths = Math.round(Math.abs(value) * 100);
    StringBuilder out = new StringBuilder();
    if (value < 0 && hundredths > 0) {
      out.append('-');
    }
    out.append(hundredths / 100);
    long rest = hundredths % 100;
    if (rest > 0) {
      out.append('.').append(rest / 10);
      if (rest % 10 > 0) {
        out.append(rest % 10);
      }
    }
    return out.toString();
  }
}
