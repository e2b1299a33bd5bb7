package skidway.intake;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One header cell, taken apart.
 *
 * @param words its words in plain lower case letters and figures, without the unit
 * @param unit the unit that it names
 */
record Headline(String words, Optional<ListUnit> unit) {
  private static final Pattern BRACKETS = Pattern.compile("[(\\[{]([^)\\]}]*)[)\\]}]");

  private static final Pattern MARKS = Pattern.compile("\\p{M}");
  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");

  static Headline of(String text) {
    Matcher brackets = BRACKETS.matcher(text);
    Optional<ListUnit> unit = Optional.empty();
    while (unit.isEmpty() && brackets.find()) {
      unit = ListUnit.of(brackets.group(1));
    }
    String bare = plain(brackets.replaceAll(" "));
    int last =
        Math.max(text.lastIndexOf(' '), Math.max(text.lastIndexOf(','), text.lastIndexOf('/')));
    if (unit.isEmpty() && last > 0) {
      unit = ListUnit.of(text.substring(last + 1));
      if (unit.isPresent()) {
        bare = plain(text.substring(0, last));
      }
    }
    return new Headline(bare, unit);
  }

  /** Words in lower case without diacritics, one space between them. */
  static String plain(String text) {
    String decomposed = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    return decomposed
        .transform(t -> MARKS.matcher(t).replaceAll(""))
        .replace("ß", "ss")
        .replace("ø", "o")
        .replace("ł", "l")
        .replace("æ", "ae")
        .replace("#", " no ")
        .replace("№", " no ")
        .replace("%", " pct ")
        .transform(t -> BETWEEN.matcher(t).replaceAll(" "))
        .strip();
  }
}
