package skidway.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import skidway.job.BadInput;
import skidway.job.TextRows;

/**
 * Finds the character between the cells of a text: the one that cuts most rows into the same number
 * of cells, more than one. So commas within numbers do not pass for separators of a list that has
 * semicolons. A first line {@code sep=;}, which some spreadsheet programs write, decides.
 */
final class Dialect {
  private static final char[] KNOWN = {',', ';', '\t', '|'};
  private static final int LINES_LOOKED_AT = 60;

  private Dialect() {}

  static char separator(String text) {
    if (hasHint(text)) {
      return text.charAt(4);
    }
    String start = start(text);
    char best = KNOWN[0];
    int bestScore = 0;
    for (char candidate : KNOWN) {
      int score = score(start, candidate);
      if (score > bestScore) {
        best = candidate;
        bestScore = score;
      }
    }
    return best;
  }

  /** Whether the first line only names the separator. */
  static boolean hasHint(String text) {
    return text.startsWith("sep=") && text.length() > 5 && text.charAt(5) == '\n';
  }

  private static String start(String text) {
    int end = 0;
    for (int i = 0; i < LINES_LOOKED_AT && end >= 0; i++) {
      end = text.indexOf('\n', end + 1);
    }
    return end < 0 ? text : text.substring(0, end + 1);
  }

  private static int score(String start, char separator) {
    List<List<TextRows.Cell>> rows;
    try {
      rows = TextRows.read("", start, separator, ListLimits.LONGEST_CELL);
    } catch (BadInput e) {
      return 0; // quotes that fit another separator, or a row cut in the middle
    }
    Map<Integer, Integer> widths = new HashMap<>();
    rows.forEach(row -> widths.merge(row.size(), 1, Integer::sum));
    return widths.entrySet().stream()
        .mapToInt(e -> e.getValue() * (e.getKey() - 1))
        .max()
        .orElse(0);
  }
}
