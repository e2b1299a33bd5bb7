package skidway.job;

import java.util.ArrayList;
import java.util.List;

/** An input file as text, with line feeds as line ends and no byte order mark. */
public final class SourceFile {
  private final String name;
  private final String text;
  private final List<Integer> lineStarts = new ArrayList<>();

  public SourceFile(String name, String text) {
    this.name = name;
    this.text = text;
  }

  /** A text with line feeds as line ends and no byte order mark. */
  static String plain(String text) {
    String lines = text.replace("\r\n", "\n").replace('\r', '\n');
    return lines.startsWith("\ufeff") ? lines.substring(1) : lines;
  }

  public String name() {
    return name;
  }

  public String text() {
    return text;
  }

  public Place at(int line, int column) {
    return new Place(this, line, column);
  }

  /** The place of a character. */
  public Place at(int offset) {
    int lineStart = text.lastIndexOf('\n', offset - 1) + 1;
    int line = 1 + (int) text.substring(0, lineStart).chars().filter(c -> c == '\n').count();
    return at(line, offset - lineStart + 1);
  }

  public Place whole() {
    return at(0, 0);
  }

  /** The text of a line, without its end; empty for line 0 or beyond the end. */
  public String line(int line) {
    findLines();
    if (line < 1 || line > lineStarts.size()) {
      return "";
    }
    int start = lineStarts.get(line - 1);
    int end = text.indexOf('\n', start);
    return text.substring(start, end < 0 ? text.length() : end);
  }

  /** Only a file with problems is asked for its lines, so they are found on the first question. */
  private void findLines() {
    if (!lineStarts.isEmpty()) {
      return;
    }
    lineStarts.add(0);
    for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
      lineStarts.add(at + 1);
    }
  }
}
