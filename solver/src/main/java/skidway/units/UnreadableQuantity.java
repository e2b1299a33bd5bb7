package skidway.units;

/** Says that a text is not the quantity that was asked for: what was found and what is allowed. */
public final class UnreadableQuantity extends RuntimeException {
  /** Longest piece of the text that is quoted back. */
  private static final int QUOTED = 40;

  private final String found;
  private final String allowed;

  UnreadableQuantity(Measure measure, String text, String allowed) {
    // A table may be full of them and where one was thrown says nothing, so without a stack trace.
    super("found " + quoted(text) + " as " + measure.word() + "; " + allowed, null, false, false);
    this.found = quoted(text) + " as " + measure.word();
    this.allowed = allowed;
  }

  /** The text and what it should have been, for example {@code "3 stone" as length}. */
  public String found() {
    return found;
  }

  /** A clause such as {@code a length is a number in feet or text such as 12 ft}. */
  public String allowed() {
    return allowed;
  }

  private static String quoted(String text) {
    if (text.isBlank()) {
      return "nothing";
    }
    String clean = text.replaceAll("\\p{Cntrl}", "?");
    if (clean.length() <= QUOTED) {
      return '"' + clean + '"';
    }
    return '"' + clean.substring(0, QUOTED) + "...\" (" + text.length() + " characters)";
  }
}
