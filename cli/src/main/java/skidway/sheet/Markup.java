package skidway.sheet;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes elements one after the other, escaped and closed in order, so that the result is
 * well-formed whatever the names in a job are. Attributes are given as name, value, name, value;
 * numbers are written by {@link Numbers}.
 */
final class Markup {
  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  Markup open(String tag, Object... attributes) {
    start(tag, attributes);
    out.append('>');
    open.push(tag);
    return this;
  }

  /** An element without content, as HTML's void elements and SVG's shapes are. */
  Markup empty(String tag, Object... attributes) {
    start(tag, attributes);
    out.append("/>");
    return this;
  }

  /** An element that holds text only. */
  Markup leaf(String tag, String text, Object... attributes) {
    return open(tag, attributes).text(text).close();
  }

  Markup text(String text) {
    out.append(Escape.text(text));
    return this;
  }

  /** Takes in what is markup already: a finished drawing, a style sheet. */
  Markup verbatim(String markup) {
    out.append(markup);
    return this;
  }

  Markup close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** Ends a line, for people who read the source. */
  Markup line() {
    out.append('\n');
    return this;
  }

  /** Everything written so far; all elements must be closed. */
  String done() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("Still open: " + open);
    }
    return out.toString();
  }

  private void start(String tag, Object... attributes) {
    out.append('<').append(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      Object value = attributes[i + 1];
      String shown =
          value instanceof Double number ? Numbers.of(number) : Escape.text(value.toString());
      out.append(' ').append(attributes[i]).append("=\"").append(shown).append('"');
    }
  }
}
