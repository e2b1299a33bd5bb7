package skidway.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Every way to take one node out of a file or put something of another kind in its place. */
final class JsonMutations {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final List<JsonNode> OTHERS =
      List.of(
          NODES.numberNode(12345),
          NODES.numberNode(0.5),
          NODES.textNode("??"),
          NODES.textNode(""),
          NODES.booleanNode(true),
          NODES.nullNode(),
          NODES.arrayNode(),
          NODES.objectNode());

  private JsonMutations() {}

  /**
   * A file with one change.
   *
   * @param pointer of the changed node, or of the object that a field was taken from
   */
  record Mutated(JsonNode file, String pointer, String what) {}

  static List<Mutated> of(JsonNode file) {
    List<Mutated> all = new ArrayList<>();
    collect(file, file, "", all);
    return all;
  }

  private static void collect(JsonNode root, JsonNode node, String pointer, List<Mutated> all) {
    if (node instanceof ObjectNode object) {
      object
          .fieldNames()
          .forEachRemaining(
              name -> {
                JsonNode without = root.deepCopy();
                ((ObjectNode) without.at(pointer)).remove(name);
                all.add(new Mutated(without, pointer, "without " + name));
                replaced(root, pointer, name, all);
                collect(root, object.get(name), pointer + "/" + name, all);
              });
    }
    if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        replaced(root, pointer, Integer.toString(i), all);
        collect(root, array.get(i), pointer + "/" + i, all);
      }
    }
  }

  private static void replaced(JsonNode root, String owner, String name, List<Mutated> all) {
    for (JsonNode other : OTHERS) {
      JsonNode changed = root.deepCopy();
      if (changed.at(owner) instanceof ObjectNode object) {
        object.set(name, other);
      } else {
        ((ArrayNode) changed.at(owner)).set(Integer.parseInt(name), other);
      }
      all.add(new Mutated(changed, owner + "/" + name, "with " + other + " as " + name));
    }
  }
}
