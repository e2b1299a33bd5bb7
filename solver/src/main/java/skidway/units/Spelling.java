package skidway.units;

import java.util.Map;

/**
 * Brings the many ways of writing the same marks down to one: typographic primes and quotes, ready
 * made fractions, odd spaces, long dashes, raised twos.
 */
final class Spelling {
  private static final Map<Character, String> PLAIN =
      Map.ofEntries(
          Map.entry('\u2019', "'"),
          Map.entry('\u2018', "'"),
          Map.entry('\u2032', "'"),
          Map.entry('\u02b9', "'"),
          Map.entry('\u201d', "\""),
          Map.entry('\u201c', "\""),
          Map.entry('\u2033', "\""),
          Map.entry('\u02ba', "\""),
          Map.entry('\u00bd', " 1/2"),
          Map.entry('\u00bc', " 1/4"),
          Map.entry('\u00be', " 3/4"),
          Map.entry('\u215b', " 1/8"),
          Map.entry('\u215c', " 3/8"),
          Map.entry('\u215d', " 5/8"),
          Map.entry('\u215e', " 7/8"),
          Map.entry('\u2044', "/"),
          Map.entry('\u2010', "-"),
          Map.entry('\u2011', "-"),
          Map.entry('\u2012', "-"),
          Map.entry('\u2013', "-"),
          Map.entry('\u2212', "-"),
          Map.entry('\u00b2', "2"),
          Map.entry('\u00a0', " "),
          Map.entry('\u2007', " "),
          Map.entry('\u2009', " "),
          Map.entry('\u202f', " "));

  private Spelling() {}

  static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      String mark = c < 128 ? null : PLAIN.get(c);
      if (mark == null) {
        append(c == '\t' ? ' ' : Character.toLowerCase(c), plain);
      } else {
        for (int k = 0; k < mark.length(); k++) {
          append(mark.charAt(k), plain);
        }
      }
    }
    return plain.toString().strip();
  }

  /** Runs of spaces become one, and two single primes a double one. */
  private static void append(char c, StringBuilder plain) {
    int last = plain.length() - 1;
    char before = last < 0 ? ' ' : plain.charAt(last);
    if (c == '\'' && before == '\'') {
      plain.setCharAt(last, '"');
    } else if (c != ' ' || before != ' ') {
      plain.append(c);
    }
  }
}
