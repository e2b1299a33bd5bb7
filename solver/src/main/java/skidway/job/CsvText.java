package skidway.job;

import java.util.Collection;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes rows of separated values (RFC 4180). A text that a spreadsheet program would run as a
 * formula gets an apostrophe in front, which such programs take for "this is text".
 */
public final class CsvText {
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:[.,]\\d+)?");

  private CsvText() {}

  /** One row without its line end. */
  public static String row(Collection<String> cells, char separator) {
    return cells.stream()
        .map(c -> quoted(defused(c), separator))
        .collect(Collectors.joining(String.valueOf(separator)));
  }

  /**
   * The text, harmless to open in a spreadsheet program. What starts with =, +, -, @, a tab or a
   * line end may be a formula there (OWASP, "CSV Injection"); plain numbers are none.
   */
  public static String defused(String cell) {
    boolean formula = !cell.isEmpty() && "=+-@\t\r\n".indexOf(cell.charAt(0)) >= 0;
    return formula && !NUMBER.matcher(cell).matches() ? "'" + cell : cell;
  }

  private static String quoted(String cell, char separator) {
    boolean edge = !cell.equals(cell.strip());
    boolean plain =
        cell.chars().noneMatch(c -> c == separator || c == '"' || c == '\n' || c == '\r');
    return plain && !edge ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
