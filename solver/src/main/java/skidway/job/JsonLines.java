package skidway.job;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Writes a tree as a person would: what fits on a line stands on one, so that a wall or a yard is a
 * line, and a difference between two files is a difference of lines.
 */
final class JsonLines {
  private static final int WIDTH = 110;
  private static final String STEP = "  ";

  private JsonLines() {}

  static String of(LocatedNode.Members root) {
    StringBuilder text = new StringBuilder();
    spread(root, "", text);
    return text.append('\n').toString();
  }

  private static void write(LocatedNode node, String indent, int before, StringBuilder text) {
    String onOneLine = oneLine(node);
    if (indent.length() + before + onOneLine.length() <= WIDTH) {
      text.append(onOneLine);
    } else {
      spread(node, indent, text);
    }
  }

  private static void spread(LocatedNode node, String indent, StringBuilder text) {
    if (node instanceof LocatedNode.Members members && !members.fields().isEmpty()) {
      text.append('{');
      String separator = "\n";
      for (Map.Entry<String, LocatedNode> field : members.fields().entrySet()) {
        String name = quoted(field.getKey()) + ": ";
        text.append(separator).append(indent).append(STEP).append(name);
        write(field.getValue(), indent + STEP, name.length(), text);
        separator = ",\n";
      }
      text.append('\n').append(indent).append('}');
    } else if (node instanceof LocatedNode.Items items && !items.nodes().isEmpty()) {
      text.append('[');
      String separator = "\n";
      for (LocatedNode item : items.nodes()) {
        text.append(separator).append(indent).append(STEP);
        write(item, indent + STEP, 0, text);
        separator = ",\n";
      }
      text.append('\n').append(indent).append(']');
    } else {
      text.append(oneLine(node));
    }
  }

  private static String oneLine(LocatedNode node) {
    if (node instanceof LocatedNode.Members members) {
      List<String> fields = new ArrayList<>();
      members.fields().forEach((name, value) -> fields.add(quoted(name) + ": " + oneLine(value)));
      return "{" + String.join(", ", fields) + "}";
    }
    if (node instanceof LocatedNode.Items items) {
      return "[" + String.join(", ", items.nodes().stream().map(JsonLines::oneLine).toList()) + "]";
    }
    if (node instanceof LocatedNode.Text text) {
      return quoted(text.value());
    }
    return node instanceof LocatedNode.Figure figure ? figure.text() : node.words();
  }

  private static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }
}
