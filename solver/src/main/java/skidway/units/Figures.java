package skidway.units;

import java.util.Locale;

/**
 * Writes quantities as people on the job write them: {@code 16'-4 1/2"} or {@code 4.99 m}, whole
 * pounds or kilograms, hours to a tenth. Thousands are set apart in every quantity: by a comma in
 * US units, by a no-break space in metric ones, where a comma may pass for the decimal sign (common
 * practice; SI Brochure, 5.4.4, from memory). Counts stay plain. The same figure always gives the
 * same text, whatever the machine's locale.
 */
public record Figures(UnitSystem units) {
  private static final char NO_BREAK_SPACE = '\u00a0';

  /** A length to the nearest half inch or centimetre. */
  public String length(double metres) {
    if (units == UnitSystem.METRIC) {
      return text("%,.2f m", metres);
    }
    long halfInches = Math.round(Math.abs(metres) / Customary.METRES_PER_INCH * 2);
    long feet = halfInches / 24;
    long inches = halfInches % 24 / 2;
    String half = halfInches % 2 == 1 ? " 1/2" : "";
    String sign = metres < 0 && halfInches > 0 ? "-" : "";
    return sign + (feet > 0 ? text("%,.0f'-", (double) feet) : "") + inches + half + "\"";
  }

  /** A mass to the whole pound or kilogram. */
  public String mass(double kg) {
    return units == UnitSystem.METRIC
        ? text("%,.0f kg", kg)
        : text("%,.0f lb", kg / Customary.KG_PER_POUND);
  }

  /** An area load, to the pound per square foot or the tenth of a kilopascal. */
  public String pressure(double kpa) {
    return units == UnitSystem.METRIC
        ? text("%,.1f kPa", kpa)
        : text("%,.0f psf", kpa / Customary.KPA_PER_PSF);
  }

  /** Walking or driving speed. */
  public String speed(double metresPerSecond) {
    return units == UnitSystem.METRIC
        ? text("%,.2f m/s", metresPerSecond)
        : text("%,.2f ft/s", metresPerSecond / Customary.METRES_PER_FOOT);
  }

  /** Person-seconds as crew hours, to a tenth. */
  public String hours(double personSeconds) {
    return text("%,.1f h", personSeconds / 3600);
  }

  /** Person-seconds as crew minutes, for costs too small for hours. */
  public String minutes(double personSeconds) {
    return text("%,.0f min", personSeconds / 60);
  }

  /** A force, such as the shear in a joist. */
  public String force(double newtons) {
    return units == UnitSystem.METRIC
        ? text("%,.2f kN", newtons / 1000)
        : text("%,.0f lb", newtons / Customary.NEWTONS_PER_POUND);
  }

  /** A bending moment. */
  public String moment(double newtonMetres) {
    return units == UnitSystem.METRIC
        ? text("%,.2f kN m", newtonMetres / 1000)
        : text(
            "%,.0f lb ft", newtonMetres / Customary.NEWTONS_PER_POUND / Customary.METRES_PER_FOOT);
  }

  private String kilovolts(double volts) {
    return text("%,.1f kV", volts / 1000).replace(".0 kV", " kV");
  }

  /** Any quantity, by its kind. */
  public String of(Measure measure, double si) {
    return switch (measure) {
      case LENGTH -> length(si);
      case MASS -> mass(si);
      case PRESSURE -> pressure(si);
      case SPEED -> speed(si);
      case DURATION -> text("%,.0f s", si);
      case ANGLE -> text("%,.1f°", si);
      case VOLTAGE -> si < 1000 ? text("%,.0f V", si) : kilovolts(si);
      case FORCE -> force(si);
      case MOMENT -> moment(si);
      case RATIO -> text("%,.2f", si);
      case COUNT -> String.format(Locale.ROOT, "%.0f", si);
    };
  }

  private String text(String format, double value) {
    String text = String.format(Locale.ROOT, format, value);
    return units == UnitSystem.METRIC ? text.replace(',', NO_BREAK_SPACE) : text;
  }

  /** The number of a figure alone, as a spreadsheet takes it. */
  public static String number(String figure) {
    return figure
        .substring(0, figure.indexOf(' '))
        .replace(",", "")
        .replace(String.valueOf(NO_BREAK_SPACE), "");
  }

  /**
   * How many there are of a thing: "1 piece", "12 pieces".
   *
   * @param thing a word that takes an s
   */
  public static String counted(long count, String thing) {
    return count == 1 ? "1 " + thing : count + " " + thing + "s";
  }
}
