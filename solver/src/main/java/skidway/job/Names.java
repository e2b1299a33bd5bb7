package skidway.job;

/** Decides what may be an id: it is painted on the ground, printed on tags and shouted. */
public final class Names {
  public static final String ALLOWED =
      "an id is a text of 1 to 40 printable characters, such as W1, B-07 or north yard";

  private Names() {}

  /** Whether a text may be an id. */
  public static boolean isId(String text) {
    return !text.isEmpty() && text.length() <= FileBounds.LONGEST_ID && printable(text);
  }

  /** Whether a text can stand on one line of a list. */
  public static boolean isLine(String text) {
    return text.length() <= FileBounds.LONGEST_LINE && printable(text);
  }

  private static boolean printable(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || (c > '~' && !text.codePoints().allMatch(Names::printable))) {
        return false;
      }
    }
    return true;
  }

  private static boolean printable(int codePoint) {
    int type = Character.getType(codePoint);
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.UNASSIGNED;
  }
}
