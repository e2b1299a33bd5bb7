package skidway.sheet;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import skidway.units.UnitSystem;

/**
 * The paper in the printer, measured standing. Sizes: ISO 216:2007 for A3 and A4; ANSI/ASME Y14.1
 * sizes A and B, 8.5 by 11 and 11 by 17 inches, for Letter and Tabloid.
 */
public enum PaperSize {
  LETTER(215.9, 279.4),
  A4(210, 297),
  TABLOID(279.4, 431.8),
  A3(297, 420);

  /** Left free at sides and top; common printers cannot print the outermost 6.4 mm (assumption). */
  public static final double MARGIN_MM = 7.7;

  /** Left free below, for the line that names job, revision and page. */
  public static final double FOOT_MM = 14.2;

  private final double widthMm;
  private final double heightMm;

  PaperSize(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** What is in the printer where people build in these units. */
  public static PaperSize usualWith(UnitSystem units) {
    return units == UnitSystem.US ? LETTER : A4;
  }

  /** The paper people call by this word, in small or capital letters. */
  public static Optional<PaperSize> of(String word) {
    return Arrays.stream(values()).filter(p -> p.word().equalsIgnoreCase(word)).findFirst();
  }

  /** As it is asked for. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }

  /** The room for a drawing on this paper lying, inside the margins. */
  public Paper lying() {
    return new Paper(heightMm - 2 * MARGIN_MM, widthMm - MARGIN_MM - FOOT_MM);
  }

  /** The room for a drawing on this paper standing, inside the margins. */
  public Paper standing() {
    return new Paper(widthMm - 2 * MARGIN_MM, heightMm - MARGIN_MM - FOOT_MM);
  }

  /** The paper tags are cut from: a larger sheet is halved, because tags keep their size. */
  public PaperSize forTags() {
    return switch (this) {
      case TABLOID -> LETTER;
      case A3 -> A4;
      default -> this;
    };
  }
}
