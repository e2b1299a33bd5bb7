package skidway.intake;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.units.Measure;
import skidway.units.Quantities;
import skidway.units.UnitSystem;
import skidway.units.UnreadableQuantity;

/**
 * A length as a list writes it, brought to text that the job reads the same way whatever its units:
 * {@code 4990,5} of a column in millimetres becomes {@code 4990.5 mm}, {@code 16 4 1/2} becomes
 * {@code 16'-4 1/2"}.
 *
 * @param text with its unit
 * @param metres the same
 */
record LengthText(String text, double metres) {
  private static final Quantities QUANTITIES = new Quantities(UnitSystem.METRIC);
  private static final Pattern BARE = Pattern.compile("-?\\d+(?:\\.\\d+)?|\\.\\d+");
  private static final Pattern FEET_INCHES_FRACTION =
      Pattern.compile("(\\d+)[ -]+(\\d+)[ -]+(\\d+/\\d+)");
  private static final Pattern FEET_INCHES = Pattern.compile("(\\d+)[ -]+(\\d+(?:\\.\\d+)?)");
  private static final Pattern INCHES_FRACTION = Pattern.compile("(\\d+[ -]+)?\\d+/\\d+");

  /**
   * Reads a length.
   *
   * @param plain with points as decimal marks
   * @param unit of a number without one; empty if that is not known
   * @return empty if it is no length, or has no unit
   */
  static Optional<LengthText> read(String plain, Optional<ListUnit> unit) {
    String text = latin(plain.strip());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (BARE.matcher(text).matches()) {
      return unit.flatMap(
          u -> sized(text + " " + (u == ListUnit.FEET_AND_INCHES ? "ft" : u.word())));
    }
    Matcher three = FEET_INCHES_FRACTION.matcher(text);
    if (three.matches()) {
      return sized(three.group(1) + "'-" + three.group(2) + " " + three.group(3) + "\"");
    }
    Matcher two = FEET_INCHES.matcher(text);
    if (two.matches()) {
      return unit.filter(u -> u == ListUnit.FEET_AND_INCHES)
          .flatMap(u -> sized(two.group(1) + "'-" + two.group(2) + "\""));
    }
    if (INCHES_FRACTION.matcher(text).matches()) {
      // Of feet and inches, 4 1/2 may be either.
      return unit.filter(u -> u == ListUnit.INCH).flatMap(u -> sized(text + "\""));
    }
    return sized(text);
  }

  /** Whether a text is a number without a unit. */
  static boolean isBare(String plain) {
    String text = plain.strip();
    return Digits.only(text, text.length()) || BARE.matcher(text).matches();
  }

  private static Optional<LengthText> sized(String text) {
    try {
      double metres = QUANTITIES.read(Measure.LENGTH, text);
      return Optional.of(new LengthText(ascii(text), metres));
    } catch (UnreadableQuantity e) {
      return Optional.empty(); // the caller says what was found, and where
    }
  }

  private static String latin(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replace("мм", "mm")
        .replace("см", "cm")
        .replace("м", "m")
        .replaceAll("\\s+", " ");
  }

  /** Whatever marks the list has, the job's table has the plain ones. */
  private static String ascii(String text) {
    return text.replaceAll("[\u2019\u2018\u2032]", "'").replaceAll("[\u201d\u201c\u2033]", "\"");
  }
}
