package skidway.cli;

/** What the commands return to scripts. */
final class ExitCode {
  /** All is well. */
  static final int FINE = 0;

  /** Done, but a rule is broken or a bundle has no spot. */
  static final int BROKEN_RULE = 1;

  /** Bad usage or bad input; nothing was written. */
  static final int BAD_INPUT = 2;

  /** A fault of ours. */
  static final int FAULT = 3;

  private ExitCode() {}
}
