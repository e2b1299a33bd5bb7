package skidway.sheet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.units.UnitSystem;

/**
 * Labels on a roll, one tag each. A page is as large as a label, so the printer needs no scaling.
 *
 * @param widthMm across the roll
 * @param lengthMm along the roll, between gaps
 */
public record TagRoll(double widthMm, double lengthMm) implements TagFormat {
  /** No side is shorter: a telephone must still read the code (assumption). */
  private static final double LEAST_MM = 75;

  /** The longer side is no shorter than this, so that all cautions have room (assumption). */
  private static final double LEAST_LONGER_MM = 100;

  /** Wider and longer labels are taken for a slip of the pen (assumption). */
  private static final double MOST_MM = 320;

  private static final double MM_PER_INCH = 25.4;

  /** The blind edge of label printers and a crooked feed (assumption). */
  private static final double PADDING_MM = 4;

  private static final Pattern WRITTEN =
      Pattern.compile(
          "\\s*(\\d{1,4}(?:\\.\\d+)?)\\s*[xX×]\\s*(\\d{1,4}(?:\\.\\d+)?)\\s*(in|mm)\\s*");

  public TagRoll {
    double shorterMm = Math.min(widthMm, lengthMm);
    double longerMm = Math.max(widthMm, lengthMm);
    if (!(shorterMm >= LEAST_MM && longerMm >= LEAST_LONGER_MM && longerMm <= MOST_MM)) {
      throw new IllegalArgumentException(
          "A label is at least 75 by 100 mm (3 by 4 in) and at most 320 mm (12.5 in) long, found "
              + Numbers.of(widthMm)
              + " by "
              + Numbers.of(lengthMm)
              + " mm.");
    }
  }

  /** The large shipping label where people build in these units (common practice). */
  public static TagRoll usualWith(UnitSystem units) {
    return units == UnitSystem.US
        ? new TagRoll(4 * MM_PER_INCH, 6 * MM_PER_INCH)
        : new TagRoll(100, 150);
  }

  /**
   * Reads width by length, such as {@code 4x6in} or {@code 100x150mm}; nothing if it is no size.
   *
   * @throws IllegalArgumentException if no tag fits on such a label
   */
  public static Optional<TagRoll> read(String size) {
    Matcher found = WRITTEN.matcher(size);
    if (!found.matches()) {
      return Optional.empty();
    }
    double unitMm = found.group(3).equals("in") ? MM_PER_INCH : 1;
    double widthMm = Double.parseDouble(found.group(1)) * unitMm;
    return Optional.of(new TagRoll(widthMm, Double.parseDouble(found.group(2)) * unitMm));
  }

  @Override
  public int perPage() {
    return 1;
  }

  @Override
  public double pageWidthMm() {
    return widthMm;
  }

  @Override
  public double pageHeightMm() {
    return lengthMm;
  }

  @Override
  public double tagWidthMm() {
    return widthMm;
  }

  @Override
  public double tagHeightMm() {
    return lengthMm;
  }

  @Override
  public double innerWidthMm() {
    return widthMm - 2 * PADDING_MM;
  }

  @Override
  public double innerHeightMm() {
    return lengthMm - 2 * PADDING_MM;
  }

  @Override
  public boolean standing() {
    return lengthMm >= widthMm;
  }

  @Override
  public boolean small() {
    return Math.max(widthMm, lengthMm) < 140;
  }

  /** In the proportions of the tags that are cut from sheets. */
  @Override
  public double unitMm() {
    return standing()
        ? 1.2 * Math.min(widthMm / 100, lengthMm / 132)
        : 0.94 * Math.min(widthMm / 100, lengthMm / 66);
  }

  @Override
  public double qrMm() {
    return standing() ? 0.46 * widthMm : Math.min(0.34 * widthMm, 0.47 * lengthMm);
  }

  @Override
  public String css() {
    return PageStyle.roll()
        + "@page { size: "
        + PageStyle.millimetres(widthMm, lengthMm)
        + "; margin: 0; }\n@page list { size: "
        + PageStyle.millimetres(widthMm, lengthMm)
        + "; margin: "
        + Numbers.of(PADDING_MM)
        + "mm; }\n.label { width: "
        + Numbers.of(widthMm)
        + "mm; height: "
        // A hair shorter than the page: rounding must not push out an empty label.
        + Numbers.of(lengthMm - 0.1)
        + "mm; }\n.label .tag { padding: "
        + Numbers.of(PADDING_MM)
        + "mm; }\n.list { max-width: "
        + Numbers.of(innerWidthMm())
        + "mm; }\n";
  }
}
