package skidway.intake;

/** Looks at runs of digits; a pattern would take most of the time that a long list takes. */
final class Digits {
  private Digits() {}

  /** How many of the ten western digits stand in a row from a place on. */
  static int at(String text, int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return Math.max(0, end - from);
  }

  /** Whether a text is nothing but so many digits at most, and one at least. */
  static boolean only(String text, int most) {
    return !text.isEmpty() && text.length() <= most && at(text, 0) == text.length();
  }
}
