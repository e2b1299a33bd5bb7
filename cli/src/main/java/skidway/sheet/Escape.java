package skidway.sheet;

/**
 * Makes any text safe inside XML and HTML, as element text or between double quotes. Characters
 * that XML cannot hold or nobody can see (control characters, halves of pairs) become a replacement
 * sign, and so do those that turn the order of the letters after them: nothing in a packing list
 * can spoil a page or make a spot's code read backwards.
 */
final class Escape {
  private static final int REPLACEMENT = 0xFFFD;

  private Escape() {}

  static String text(String raw) {
    StringBuilder out = new StringBuilder(raw.length() + 8);
    raw.codePoints().forEach(c -> append(out, c));
    return out.toString();
  }

  private static void append(StringBuilder out, int c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(allowed(c) ? c : REPLACEMENT);
    }
  }

  private static boolean allowed(int c) {
    boolean blank = c == '\t' || c == '\n' || c == '\r';
    return switch (Character.getType(c)) {
      case Character.CONTROL -> blank;
      case Character.SURROGATE -> false;
      default -> !turns(c) && (c & 0xFFFE) != 0xFFFE;
    };
  }

  /** Bidi_Control of the Unicode Character Database, UAX #9 (from memory, confirm). */
  private static boolean turns(int c) {
    return c == 0x061C
        || c == 0x200E
        || c == 0x200F
        || (c >= 0x202A && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x2069);
  }
}
