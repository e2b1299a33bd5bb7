package skidway.intake;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A section in one cell: width across the wall first, then height, as {@code 150x200}, {@code 6" x
 * 8"} or {@code 150/200 mm} (common practice; the other way round is one correction).
 */
record SectionText(LengthText width, LengthText height) {
  private static final Pattern TIMES =
      Pattern.compile("\\s*[x\u00d7*\u0445]\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern SLASH = Pattern.compile("(\\d{2,4})\\s*/\\s*(\\d{2,4})(\\D*)");
  private static final Pattern UNIT = Pattern.compile("(mm|cm|m|in|ft|\"|')\\s*$");

  /**
   * Reads a section; empty if it is none.
   *
   * @param plain with points as decimal marks
   */
  static Optional<SectionText> read(String plain, Optional<ListUnit> unit) {
    Matcher slash = SLASH.matcher(plain.strip());
    String[] sides =
        slash.matches()
            ? new String[] {slash.group(1), slash.group(2) + slash.group(3)}
            : TIMES.split(plain.strip());
    if (sides.length != 2) {
      return Optional.empty();
    }
    Matcher last = UNIT.matcher(sides[1].toLowerCase(Locale.ROOT));
    Optional<ListUnit> both = last.find() ? ListUnit.of(last.group(1)) : unit;
    Optional<LengthText> width = LengthText.read(sides[0], both);
    Optional<LengthText> height = LengthText.read(sides[1], both);
    return width.isPresent() && height.isPresent()
        ? Optional.of(new SectionText(width.get(), height.get()))
        : Optional.empty();
  }
}
