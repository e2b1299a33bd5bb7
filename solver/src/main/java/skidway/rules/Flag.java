package skidway.rules;

/** How far the number behind a setting is to be trusted. */
public enum Flag {
  /** Read in the source named. */
  SEEN("seen in the source"),
  /** Read in a secondary text that restates the source named. */
  SECONDARY("from a secondary text, confirm"),
  /** Recalled and not looked up. */
  MEMORY("from memory, confirm"),
  /** Usual on sites; no published source. */
  COMMON_PRACTICE("common practice"),
  /** Skidway's own assumption; replace it with what is measured on the job. */
  ASSUMPTION("assumption");

  private final String words;

  Flag(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
