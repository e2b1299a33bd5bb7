package skidway.survey;

import java.util.regex.Pattern;
import skidway.units.Measure;

/**
 * Tells where in a line a quantity ends: {@code 16'-4 1/2"} holds a space, {@code 4' 3} does not.
 */
final class Wording {
  private static final String NUMBER = "(?:\\d{1,12}(?:\\.\\d{0,12})?|\\.\\d{1,12})";
  private static final String FRACTION = "(?:[ -]\\d{1,3}/\\d{1,3}| ?[½¼¾⅛⅜⅝⅞])";
  private static final String INCH = "(?:\"|''|inches\\b|inch\\b|in\\b)";
  private static final String FOOT = "(?:'(?!')|feet\\b|foot\\b|ft\\b)";
  private static final String INCHES = "(?:" + NUMBER + FRACTION + "?|\\d{1,3}/\\d{1,3}|[½¼¾⅛⅜⅝⅞])";

  private static final Pattern LENGTH =
      Pattern.compile(
          "-?(?:\\d{1,6} ?"
              + FOOT
              + " ?-? ?"
              + INCHES
              + " ?"
              + INCH
              + "|\\d{1,6} ?"
              + FOOT
              + "-"
              + INCHES
              + "|"
              + INCHES
              + " ?"
              + INCH
              + "|"
              + NUMBER
              + " ?(?:"
              + FOOT
              + "|mm\\b|cm\\b|m\\b)"
              + "|"
              + NUMBER
              + ")",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern MASS = with("(?:lbs|lb|kg|t)\\b");
  private static final Pattern PRESSURE =
      with("(?:psf|lb/ft2|lb/ft²|kPa|kN/m2|kN/m²|kg/m2|kg/m²)(?![a-z0-9])");
  private static final Pattern ANGLE = with("(?:°|deg\\b)");
  private static final Pattern VOLTAGE = with("(?:kV|V)\\b");
  private static final Pattern RATIO = with("%");
  private static final Pattern COUNT = with("(?!)");

  private Wording() {}

  /** A quantity of a kind from where it begins to where it may end. */
  static Pattern of(Measure measure) {
    return switch (measure) {
      case LENGTH -> LENGTH;
      case MASS -> MASS;
      case PRESSURE -> PRESSURE;
      case ANGLE -> ANGLE;
      case VOLTAGE -> VOLTAGE;
      case RATIO -> RATIO;
      case COUNT -> COUNT;
      case SPEED, DURATION, FORCE, MOMENT ->
          throw new IllegalArgumentException("No site is told by " + measure.word());
    };
  }

  private static Pattern with(String unit) {
    return Pattern.compile("-?" + NUMBER + "(?: ?" + unit + ")?", Pattern.CASE_INSENSITIVE);
  }

  /** Primes and quotes as a keyboard has them, each for one, so that columns stay. */
  static String plain(String line) {
    return line.replace('\u2019', '\'')
        .replace('\u2018', '\'')
        .replace('\u2032', '\'')
        .replace('\u201d', '"')
        .replace('\u201c', '"')
        .replace('\u2033', '"')
        .replace('\u00a0', ' ')
        .replace('\u202f', ' ')
        .replace('\u2009', ' ')
        .replace('\t', ' ');
  }
}
