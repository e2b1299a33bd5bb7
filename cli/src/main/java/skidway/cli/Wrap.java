package skidway.cli;

import java.util.ArrayList;
import java.util.List;

/** Breaks long sentences between words, so that they can be read on a screen of 100 columns. */
final class Wrap {
  static final int SCREEN = 100;

  private Wrap() {}

  /**
   * Lines of no more than {@link #SCREEN} characters, the first after one gap, the rest after
   * another.
   */
  static List<String> sentence(String text, int firstGap, int restGap) {
    List<String> lines = new ArrayList<>();
    for (String line : words(text, SCREEN - Math.max(firstGap, restGap))) {
      lines.add(" ".repeat(lines.isEmpty() ? firstGap : restGap) + line);
    }
    return lines;
  }

  /** Lines of no more than this many characters; a longer word keeps a line for itself. */
  static List<String> words(String text, int most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+", -1)) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > most) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
