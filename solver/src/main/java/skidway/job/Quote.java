package skidway.job;

/** Shortens what is quoted from a file, so that a message stays a message. */
public final class Quote {
  private static final int MOST = 60;

  private Quote() {}

  public static String shortened(String text) {
    String clean = text.strip().replaceAll("\\p{Cntrl}", "?");
    return clean.length() <= MOST ? clean : clean.substring(0, MOST) + "...";
  }

  /** The text in quotes, or the word for none. */
  public static String found(String text) {
    return text.isBlank() ? "nothing" : '"' + shortened(text) + '"';
  }
}
