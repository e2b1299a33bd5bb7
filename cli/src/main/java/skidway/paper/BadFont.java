package skidway.paper;

/** A file named as a font that cannot be put into a PDF; its message is for the person who did. */
public final class BadFont extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final String sentence;

  BadFont(String message) {
    super(message);
    this.sentence = message;
  }

  /** What is wrong and a way out. */
  public String sentence() {
    return sentence;
  }
}
