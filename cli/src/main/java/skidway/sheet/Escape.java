package skidway.sheet;

/**
 * Makes any text safe inside XML and HTML, as element text or between double quotes. Characters
 * that XML cannot hold at all (control characters, halves of pairs) become a replacement sign, so
 * that nothing in a packing list can spoil a page.
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
    boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r';
    boolean halfPair = c >= 0xD800 && c <= 0xDFFF;
    return !control && !halfPair && c != 0xFFFE && c != 0xFFFF;
  }
}
