package skidway.job;

import java.util.Collection;
import java.util.regex.Pattern;

/**
 * Writes rows of separated values (RFC 4180). A text that a spreadsheet program would run as a
 * formula gets an apostrophe in front, which such programs take for "this is text".
 */
public final class CsvText {
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:[.,]\\d+)?");

  private CsvText() {}

  /** One row without its line end. */
  public static String row(Collection<String> cells, char separator) {
    StringBuilder row = new StringBuilder();
    boolean first = true;
    for (String cell : cells) {
      if (!first) {
        row.append(separator);
      }
      first = false;
      row.append(quoted(defused(cell), separator));
    }
    return row.toString();
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
    return plain(cell, separator) && !edge ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  private static boolean plain(String cell, char separator) {
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == separator || c == '"' || c == '\n' || c == '\r') {
        return false;
      }
    }
    return true;
  }
}
