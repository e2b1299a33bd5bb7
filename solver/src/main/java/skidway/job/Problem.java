package skidway.job;

import java.util.Locale;

/**
 * One thing wrong (or, as a remark, odd) in an input file.
 *
 * @param file name within the job folder
 * @param line 1 is the first; 0 when it is about the whole file
 * @param column character of the line, 1 is the first
 * @param found what is there
 * @param allowed what may be there, as a clause
 * @param wayOut what to do, as a clause
 * @param source the line it is in, or an empty text
 */
public record Problem(
    String file, int line, int column, String found, String allowed, String wayOut, String source) {
  /** Most characters of the source line that are shown. */
  private static final int SHOWN = 100;

  /** For example {@code bundles.csv:7:12: found ...; a length is .... Way out: ....} */
  public String text() {
    String where = line == 0 ? file : String.format(Locale.ROOT, "%s:%d:%d", file, line, column);
    return where + ": found " + found + "; " + allowed + ". Way out: " + wayOut + ".";
  }

  /** The text, and below it the source line with a caret under the place. */
  public String picture() {
    if (source.isBlank()) {
      return text();
    }
    int from = Math.max(0, Math.min(column - 1 - SHOWN / 2, source.length() - SHOWN));
    String shown = source.substring(from, Math.min(source.length(), from + SHOWN));
    String clean = shown.replaceAll("\\p{Cntrl}", " ");
    int before = Math.max(0, Math.min(column - 1 - from, shown.length()));
    return text() + "\n    " + clean + "\n    " + " ".repeat(before) + "^";
  }
}
