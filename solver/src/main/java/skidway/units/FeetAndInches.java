package skidway.units;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths with fractions: {@code 16'-4 1/2"}, {@code 16' 4"}, {@code 4-1/2"}, {@code 3/4 in},
 * {@code 12 ft 6}. Inches that stand beside feet are below 12, and the feet beside them are whole.
 * An inch mark may be missing only after feet. A number of feet without a mark is not read here.
 */
final class FeetAndInches {
  private static final String FOOT = "(?:'|ft|foot|feet)";
  private static final String INCH = "(?:\"|in|inch|inches)";

  /** Whole inches, a fraction, both, or a decimal number; groups: whole, top, bottom. */
  private static final String INCHES =
      "(?:(\\d{1,6}(?:\\.\\d{0,9})?|\\.\\d{1,9})(?:[ -](\\d{1,3})/(\\d{1,3}))?|(\\d{1,3})/(\\d{1,3}))";

  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(-)?(\\d{1,6}) ?" + FOOT + " ?-? ?" + INCHES + " ?" + INCH + "?");
  private static final Pattern INCHES_ALONE = Pattern.compile("(-)?" + INCHES + " ?" + INCH);

  private FeetAndInches() {}

  /** Metres, or empty if the text has another form. */
  static OptionalDouble metres(String plain) {
    Matcher both = FEET_AND_INCHES.matcher(plain);
    if (both.matches()) {
      OptionalDouble inches = inches(both, 3);
      if (inches.isEmpty() || inches.getAsDouble() >= 12) {
        return OptionalDouble.empty();
      }
      double all = Integer.parseInt(both.group(2)) * 12 + inches.getAsDouble();
      return OptionalDouble.of(signed(both, all));
    }
    Matcher alone = INCHES_ALONE.matcher(plain);
    if (!alone.matches()) {
      return OptionalDouble.empty();
    }
    OptionalDouble inches = inches(alone, 2);
    return inches.isEmpty() ? inches : OptionalDouble.of(signed(alone, inches.getAsDouble()));
  }

  private static OptionalDouble inches(Matcher m, int group) {
    String whole = m.group(group);
    boolean fractionAlone = whole == null;
    String top = m.group(fractionAlone ? group + 3 : group + 1);
    String bottom = m.group(fractionAlone ? group + 4 : group + 2);
    double inches = fractionAlone ? 0 : Double.parseDouble(whole);
    if (top == null) {
      return OptionalDouble.of(inches);
    }
    boolean decimalToo = !fractionAlone && whole.indexOf('.') >= 0;
    int parts = Integer.parseInt(bottom);
    if (decimalToo || Integer.parseInt(top) >= parts) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(inches + Double.parseDouble(top) / parts);
  }

  private static double signed(Matcher m, double inches) {
    return (m.group(1) == null ? inches : -inches) * Customary.METRES_PER_INCH;
  }
}
