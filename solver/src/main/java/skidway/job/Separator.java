package skidway.job;

/** Finds the character between the cells of a table, from its header line. */
final class Separator {
  private static final char[] KNOWN = {',', ';', '\t'};

  private Separator() {}

  /** The one of comma, semicolon and tab that stands most often outside quotes. */
  static char of(String header) {
    char best = KNOWN[0];
    for (char candidate : KNOWN) {
      if (count(header, candidate) > count(header, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static int count(String header, char separator) {
    int count = 0;
    boolean quoted = false;
    for (int i = 0; i < header.length(); i++) {
      char c = header.charAt(i);
      quoted ^= c == '"';
      if (c == separator && !quoted) {
        count++;
      }
    }
    return count;
  }
}
