package skidway.sheet;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;

/**
 * Writes names the way a tag's code holds them: on one line, accents in their usual form, and no
 * longer than there is room for. A name that is too long loses its end and gets letters computed
 * from all of it instead, so that two long names that begin alike stay apart.
 */
public final class TagName {
  private static final int JOB_BYTES = 20;
  private static final int BUNDLE_BYTES = 14;
  private static final int SPOT_BYTES = 10;

  private TagName() {}

  public static String job(String name) {
    return within(name, JOB_BYTES);
  }

  public static String bundle(String id) {
    return within(id, BUNDLE_BYTES);
  }

  public static String spot(String id) {
    return within(id, SPOT_BYTES);
  }

  /** One line without anything a telephone may swallow or change. */
  static String oneLine(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().map(c -> blank(c) ? ' ' : c).forEach(out::appendCodePoint);
    String plain = Normalizer.normalize(out, Normalizer.Form.NFC);
    return plain.strip().replaceAll(" {2,}", " ");
  }

  private static boolean blank(int c) {
    int type = Character.getType(c);
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.UNASSIGNED;
  }

  private static String within(String name, int mostBytes) {
    String line = oneLine(name);
    if (line.isEmpty()) {
      return "-";
    }
    if (bytes(line) <= mostBytes) {
      return line;
    }
    String end = "~" + TagCheck.letters(line);
    StringBuilder head = new StringBuilder();
    for (int c : line.codePoints().toArray()) {
      String next = Character.toString(c);
      if (bytes(head + next + end) > mostBytes) {
        break;
      }
      head.append(next);
    }
    return head.toString().strip() + end;
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }
}
