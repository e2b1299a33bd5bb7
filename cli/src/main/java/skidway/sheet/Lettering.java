package skidway.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Estimates how much room text takes without knowing the reader's font: a fixed width for each kind
 * of character, on the wide side of the usual sans-serif fonts.
 */
final class Lettering {
  /** Height of a line of text over its font size. */
  static final double LINE = 1.22;

  private static final double BOLD = 1.07;

  /** Of the narrowest characters, in font sizes. */
  private static final double NARROWEST = 0.38;

  /** Of a longer text the middle is left out before it is cut into lines. */
  private static final int MOST_CUT = 200;

  private Lettering() {}

  static double widthMm(String text, double sizeMm, boolean bold) {
    return text.codePoints().mapToDouble(Lettering::ems).sum() * sizeMm * (bold ? BOLD : 1);
  }

  private static double ems(int c) {
    if ("iIjl.,:;'|!/ ()-·".indexOf(c) >= 0) {
      return NARROWEST;
    }
    if ("mwMW@%".indexOf(c) >= 0) {
      return 0.93;
    }
    if (c > 0x24F) {
      return 1;
    }
    return Character.isUpperCase(c) ? 0.72 : 0.58;
  }

  /** The text, its middle left out when it has more characters than fit. */
  static String shortened(String text, int most) {
    int[] points = text.codePoints().toArray();
    if (points.length <= most) {
      return text;
    }
    int head = (most - 1) / 2;
    int tail = most - 1 - head;
    return new String(points, 0, head) + "…" + new String(points, points.length - tail, tail);
  }

  /** The text with its end left out until it is no wider than this. */
  static String fitted(String text, double sizeMm, boolean bold, double mostMm) {
    // Of a name of thousands of letters no more are tried than could fit were they all narrow.
    int couldFit = (int) Math.min(10_000, Math.ceil(mostMm / (NARROWEST * sizeMm))) + 1;
    int most = Math.max(2, Math.min(text.codePointCount(0, text.length()), couldFit));
    String shown = shortened(text, most);
    while (most > 2 && widthMm(shown, sizeMm, bold) > mostMm) {
      most--;
      shown = shortened(text, most);
    }
    return shown;
  }

  /** The text cut into lines that are no wider than this, wherever a line is full. */
  static List<String> cut(String text, double sizeMm, boolean bold, double mostMm) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    double mostEms = mostMm / (sizeMm * (bold ? BOLD : 1));
    double ems = 0;
    for (int c : shortened(text, MOST_CUT).codePoints().toArray()) {
      ems += ems(c);
      if (!line.isEmpty() && ems > mostEms) {
        lines.add(line.toString());
        line.setLength(0);
        ems = ems(c);
      }
      line.appendCodePoint(c);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The text in lines no wider than this, broken between words. */
  static List<String> wrapped(String text, Type type, double mostMm) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+", -1)) {
      String part = fitted(word, type.sizeMm(), type.bold(), mostMm);
      String longer = line.isEmpty() ? part : line + " " + part;
      if (!line.isEmpty() && type.widthMm(longer) > mostMm) {
        lines.add(line);
        longer = part;
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }

  /** The text in lines of no more than this many characters, broken between words. */
  static List<String> wrapped(String text, int most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+", -1)) {
      String part = shortened(word, most);
      if (line.isEmpty()) {
        line = part;
      } else if (line.length() + 1 + part.length() <= most) {
        line = line + " " + part;
      } else {
        lines.add(line);
        line = part;
      }
    }
    lines.add(line);
    return lines;
  }
}
