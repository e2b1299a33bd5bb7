package skidway.paper;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;

/**
 * Where a line may end: between words, but not within numbers such as 4-7, 08:00 or 16'-4 1/2",
 * whose halves would be read as two; and within words that are longer than any of our own, because
 * an id may be wider than its column.
 */
final class LineBreaks implements FSTextBreaker {
  private static final int LONGEST = 18;
  private static final int PART = 8;

  private final Deque<Integer> breaks = new ArrayDeque<>();

  @Override
  public void setText(String text) {
    breaks.clear();
    BreakIterator words = BreakIterator.getLineInstance(Locale.ROOT);
    words.setText(text);
    int from = words.first();
    for (int to = words.next(); to != BreakIterator.DONE; to = words.next()) {
      if (withinNumbers(text, to)) {
        continue;
      }
      if (to - from > LONGEST) {
        for (int within = from + PART; within < to - 1; within += PART) {
          boolean pair = Character.isLowSurrogate(text.charAt(within));
          breaks.add(pair ? within + 1 : within);
        }
      }
      breaks.add(to);
      from = to;
    }
  }

  private static boolean withinNumbers(String text, int at) {
    if (at < 2 || at >= text.length() || !Character.isDigit(text.charAt(at))) {
      return false;
    }
    char before = text.charAt(at - 2);
    return switch (text.charAt(at - 1)) {
      case '-' -> Character.isDigit(before) || before == '\'';
      case ':' -> Character.isDigit(before);
      case ' ' -> Character.isDigit(before) && text.startsWith("/", at + 1);
      default -> false;
    };
  }

  @Override
  public int next() {
    return breaks.isEmpty() ? BreakIterator.DONE : breaks.remove();
  }
}
