package skidway.rules;

/** Says which way a setting makes the hard rules it belongs to ask less. */
public enum Weaker {
  /** A smaller distance, strip or bearer asks less. */
  LOWER("lower"),
  /** A larger overhang, height or share asks less. */
  HIGHER("higher"),
  /** It prices work and guards nobody. */
  NEITHER("");

  private final String words;

  Weaker(String words) {
    this.words = words;
  }

  /** For lists; empty if there is no weaker side. */
  public String words() {
    return words;
  }
}
