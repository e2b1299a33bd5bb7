package skidway.job;

import java.util.ArrayList;
import java.util.List;

/** Reads lists of ids, and lists of such lists. What is wrong in them is left out and reported. */
final class IdLists {
  private IdLists() {}

  /**
   * @param least how many there are at least
   */
  static List<String> ids(Fields f, String name, int least) {
    return ids(f, name, f.items(name, least, FileBounds.MOST_PLAN_ENTRIES));
  }

  /** Lists of ids; there is at least one, and none is empty. */
  static List<List<String>> layers(Fields f, String name) {
    List<List<String>> layers = new ArrayList<>();
    for (LocatedNode node : f.items(name, 1, FileBounds.MOST_PLAN_ENTRIES)) {
      if (node instanceof LocatedNode.Items items && !items.nodes().isEmpty()) {
        layers.add(ids(f, name, items.nodes()));
      } else {
        f.report(
            node.place(),
            node.words() + " in \"" + name + '"',
            "every entry of \"" + name + "\" is a list in brackets of at least one id",
            "name what lies there, or take the entry out");
      }
    }
    return layers;
  }

  private static List<String> ids(Fields f, String name, List<LocatedNode> nodes) {
    List<String> ids = new ArrayList<>();
    for (LocatedNode node : nodes) {
      if (node instanceof LocatedNode.Text text && Names.isId(text.value().strip())) {
        ids.add(text.value().strip());
      } else {
        f.report(node.place(), node.words() + " in \"" + name + '"', Names.ALLOWED, "correct it");
      }
    }
    return ids;
  }
}
