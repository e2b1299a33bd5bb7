package skidway.job;

import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands. */
public sealed interface LocatedNode {
  Place place();

  /** What it is, as in {@code found a list}. */
  String words();

  /** An object: its fields in file order, and where their names stand. */
  record Members(Place place, Map<String, LocatedNode> fields, Map<String, Place> names)
      implements LocatedNode {
    @Override
    public String words() {
      return "an object in braces";
    }
  }

  record Items(Place place, List<LocatedNode> nodes) implements LocatedNode {
    @Override
    public String words() {
      return "a list of " + nodes.size();
    }
  }

  record Text(Place place, String value) implements LocatedNode {
    @Override
    public String words() {
      return '"' + Quote.shortened(value) + '"';
    }
  }

  record Figure(Place place, String text, double value) implements LocatedNode {
    @Override
    public String words() {
      return "the number " + Quote.shortened(text);
    }
  }

  record Flag(Place place, boolean value) implements LocatedNode {
    @Override
    public String words() {
      return String.valueOf(value);
    }
  }

  record Nothing(Place place) implements LocatedNode {
    @Override
    public String words() {
      return "null";
    }
  }
}
