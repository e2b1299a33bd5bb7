package skidway.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes rows of comma-separated values (RFC 4180). A spreadsheet evaluates a cell that starts like
 * a formula, and a name in a packing list may; such a cell gets an apostrophe before it, which is
 * common practice, and is then text. Numbers stay numbers.
 */
final class Csv {
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

  /**
   * What starts a formula, in either width. Also after signs that other settings of a spreadsheet
   * take for the end of a cell: a semicolon, a tab, a line end.
   */
  private static final Pattern FORMULA =
      Pattern.compile("(?<=^|[;\t\r\n])(?=[ \\u00A0\\u3000]*[=+\\-@\t\r＝＋－＠])");

  private Csv() {}

  static String row(String... cells) {
    return Arrays.stream(cells).map(Csv::quoted).collect(Collectors.joining(","));
  }

  /** A figure in SI units, with a point whatever the machine's locale. */
  static String figure(double value) {
    return Double.isFinite(value) ? String.format(Locale.ROOT, "%.4f", value) : "";
  }

  private static String quoted(String cell) {
    String safe = NUMBER.matcher(cell).matches() ? cell : FORMULA.matcher(cell).replaceAll("'");
    boolean plain = safe.chars().noneMatch(c -> ",;\"\t\n\r".indexOf(c) >= 0);
    return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
  }
}
