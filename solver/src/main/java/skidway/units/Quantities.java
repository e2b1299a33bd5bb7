package skidway.units;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as people on the job write them, into SI: {@code 16'-4 1/2"}, {@code 4.99 m},
 * {@code 60 psf}, {@code 2 mph}, {@code 60 %}. A number without a unit counts in the job's unit:
 * feet, pounds, psf and ft/s, or metres, kilograms, kPa and m/s; always seconds, degrees and shares
 * of one.
 *
 * <p>Commas are refused: {@code 4,990 m} is five kilometres to one reader and five metres to
 * another. Lengths and angles may be negative (coordinates), nothing else may.
 *
 * @see Figures the other way round
 */
public record Quantities(UnitSystem units) {
  /** More than any quantity needs; longer texts are refused unread. */
  private static final int LONGEST_TEXT = 60;

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("(-?(?:\\d{1,12}(?:\\.\\d{0,12})?|\\.\\d{1,12})) ?([^\\d .,-][^ ]{0,9})?");

  public double length(String text) {
    return read(Measure.LENGTH, text);
  }

  /**
   * Any quantity, by its kind.
   *
   * @return a finite number in the kind's SI unit
   * @throws UnreadableQuantity if the text is not such a quantity
   */
  public double read(Measure measure, String text) {
    if (text.length() > LONGEST_TEXT) {
      throw unreadable(measure, text);
    }
    String plain = Spelling.plain(text);
    OptionalDouble mixed =
        measure == Measure.LENGTH ? FeetAndInches.metres(plain) : OptionalDouble.empty();
    return mixed.isPresent() ? mixed.getAsDouble() : numberAndUnit(measure, text, plain);
  }

  /** A number without a unit, as JSON numbers are. */
  public double bare(Measure measure, double number) {
    return signAllowed(
        measure,
        String.valueOf(number),
        number * UnitNames.inSi(measure, "", units).orElse(Double.NaN));
  }

  /** What a text of this kind may look like on this job, as a clause. */
  public String allowed(Measure measure) {
    boolean us = units == UnitSystem.US;
    return switch (measure) {
      case LENGTH ->
          "a length is a number in "
              + (us ? "feet" : "metres")
              + " or text such as 16'-4 1/2\" or 4.99 m";
      case MASS ->
          "a mass is a number in "
              + (us ? "pounds" : "kilograms")
              + " or text such as 950 lb or 430 kg";
      case PRESSURE ->
          "an area load is a number in "
              + (us ? "psf" : "kPa")
              + " or text such as 60 psf or 2.9 kPa";
      case SPEED ->
          "a speed is a number in " + (us ? "ft/s" : "m/s") + " or text such as 4 ft/s or 1.2 m/s";
      case DURATION -> "a duration is a number of seconds or text such as 90 s, 3 min or 1.5 h";
      case ANGLE -> "an angle is a number of degrees";
      case VOLTAGE -> "a voltage is text with its unit, such as 7.2 kV or 400 V";
      case FORCE -> "a force is a number in " + (us ? "pounds" : "newtons");
      case MOMENT -> "a bending moment is a number in " + (us ? "lb ft" : "N m");
      case RATIO -> "a share is a number such as 0.6 or text such as 60 %";
      case COUNT -> "a count is a whole number";
    };
  }

  private double numberAndUnit(Measure measure, String text, String plain) {
    Matcher m = NUMBER_AND_UNIT.matcher(plain);
    if (!m.matches()) {
      throw unreadable(measure, text);
    }
    String unit = m.group(2) == null ? "" : m.group(2);
    OptionalDouble factor = UnitNames.inSi(measure, unit, units);
    if (factor.isEmpty()) {
      throw unreadable(measure, text);
    }
    return signAllowed(measure, text, Double.parseDouble(m.group(1)) * factor.getAsDouble());
  }

  private double signAllowed(Measure measure, String text, double si) {
    boolean signed = measure == Measure.LENGTH || measure == Measure.ANGLE;
    boolean whole = measure != Measure.COUNT || si == Math.rint(si);
    if (!Double.isFinite(si) || !whole || (si < 0 && !signed)) {
      throw unreadable(measure, text);
    }
    return si + 0.0; // turns -0 into 0
  }

  private UnreadableQuantity unreadable(Measure measure, String text) {
    String comma = text.indexOf(',') >= 0 ? ", with a point and no comma" : "";
    return new UnreadableQuantity(measure, text, allowed(measure) + comma);
  }
}
