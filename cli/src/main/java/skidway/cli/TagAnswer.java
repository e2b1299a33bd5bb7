package skidway.cli;

import java.util.List;

/** What is to be said about a tag, and what is returned to scripts. */
record TagAnswer(int code, List<String> lines) {
  /** The tag says what the newest plan says. */
  static final int HOLDS = 0;

  /** It is of another plan, or the bundle lies elsewhere. */
  static final int OUTDATED = 1;

  /** No tag, or none of this job. */
  static final int NO_TAG = 2;

  TagAnswer {
    lines = List.copyOf(lines);
  }

  static TagAnswer of(int code, String... lines) {
    return new TagAnswer(code, List.of(lines));
  }
}
