package skidway.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import skidway.units.Measure;
import skidway.units.Nearest;

/**
 * The fields of one JSON object, read by type. What is missing or wrong becomes a problem at its
 * place and a harmless stand-in value; {@link #finish} builds the thing only if nothing was wrong.
 */
final class Fields {
  private final LocatedNode.Members node;
  private final String owner;
  private final Values values;
  private final Set<String> asked = new HashSet<>();
  private final int problemsBefore;

  /**
   * @param owner what the object describes, as in {@code wall "W1"}
   */
  Fields(LocatedNode.Members node, String owner, Values values) {
    this.node = node;
    this.owner = owner;
    this.values = values;
    this.problemsBefore = values.problems().count();
  }

  /** The place of a field's value, or of the object when there is none. */
  Place at(String name) {
    LocatedNode value = node.fields().get(name);
    return value == null ? node.place() : value.place();
  }

  /** The place of a field's name. */
  Place nameOf(String name) {
    return node.names().getOrDefault(name, node.place());
  }

  /** All field names, in file order. */
  List<String> names() {
    return List.copyOf(node.fields().keySet());
  }

  boolean has(String name) {
    asked.add(name);
    LocatedNode value = node.fields().get(name);
    return value != null && !(value instanceof LocatedNode.Nothing);
  }

  /** A required field, whatever its type. */
  Optional<LocatedNode> node(String name, String allowed) {
    asked.add(name);
    LocatedNode value = node.fields().get(name);
    if (value == null) {
      String hint = Nearest.hint(name, unasked());
      report(at(name), owner + " without \"" + name + '"' + hint, allowed, "add the field");
    }
    return Optional.ofNullable(value);
  }

  /** A required field of one type. */
  <T extends LocatedNode> Optional<T> typed(String name, Class<T> type, String allowed) {
    Optional<LocatedNode> value = node(name, allowed);
    if (value.isPresent() && !type.isInstance(value.get())) {
      wrong(name, value.get(), allowed);
    }
    return value.filter(type::isInstance).map(type::cast);
  }

  void wrong(String name, LocatedNode value, String allowed) {
    report(at(name), value.words() + " as \"" + name + '"', allowed, "correct it");
  }

  /** The id of the thing itself; it is registered. */
  String id(Ids ids) {
    String id = reference("id");
    ids.register(id, at("id"));
    return id;
  }

  /** The id of another thing. */
  String reference(String name) {
    Optional<LocatedNode.Text> text = typed(name, LocatedNode.Text.class, Names.ALLOWED);
    String id = text.map(t -> t.value().strip()).orElse("");
    if (text.isPresent() && !Names.isId(id)) {
      wrong(name, text.get(), Names.ALLOWED);
      return "";
    }
    return id;
  }

  boolean flag(String name, boolean otherwise) {
    return has(name) ? flag(name) : otherwise;
  }

  boolean flag(String name) {
    String allowed = '"' + name + "\" is true or false";
    return typed(name, LocatedNode.Flag.class, allowed).map(LocatedNode.Flag::value).orElse(false);
  }

  /** One of an enum's values, written in lower case. */
  <E extends Enum<E>> E choice(String name, E otherwise) {
    List<E> all = List.of(otherwise.getDeclaringClass().getEnumConstants());
    List<String> words = all.stream().map(Words::of).toList();
    return all.get(choice(name, words));
  }

  /** The index of the word that stands there; 0 after a problem. */
  int choice(String name, List<String> words) {
    String allowed = '"' + name + "\" is one of " + String.join(", ", words);
    Optional<LocatedNode.Text> text = typed(name, LocatedNode.Text.class, allowed);
    int index = text.map(t -> words.indexOf(t.value().strip())).orElse(0);
    if (index < 0) {
      String hint = Nearest.hint(text.get().value(), words);
      report(at(name), text.get().words() + " as \"" + name + '"' + hint, allowed, "correct it");
    }
    return Math.max(0, index);
  }

  double quantity(String name, Bounds bounds) {
    return quantity(name, bounds.range());
  }

  /** A quantity in SI; not a number after a problem. */
  double quantity(String name, Bounds.Range range) {
    String allowed = values.allowed(range.measure());
    Optional<LocatedNode> value = node(name, allowed);
    return value.isEmpty() ? Double.NaN : quantity(value.get(), name, range);
  }

  OptionalDouble optional(String name, Bounds bounds) {
    return has(name) ? OptionalDouble.of(quantity(name, bounds)) : OptionalDouble.empty();
  }

  double quantity(LocatedNode value, String name, Bounds.Range range) {
    return values.read(value, name, range);
  }

  /** A list of nodes; empty after a problem. */
  List<LocatedNode> items(String name, int least, int most) {
    String allowed =
        '"' + name + "\" is a list in brackets of " + least + " to " + most + " entries";
    Optional<LocatedNode.Items> items = typed(name, LocatedNode.Items.class, allowed);
    if (items.isEmpty()) {
      return List.of();
    }
    int size = items.get().nodes().size();
    if (size < least || size > most) {
      wrong(name, items.get(), allowed);
      return List.of();
    }
    return items.get().nodes();
  }

  /** The things of a list that may be missing. */
  <T> List<Read<T>> optionalObjects(String name, Ids ids, Function<Fields, Optional<T>> reader) {
    return has(name) ? objects(name, 0, FileBounds.MOST_THINGS, ids, reader) : List.of();
  }

  <T> List<Read<T>> objects(String name, int least, Ids ids, Function<Fields, Optional<T>> reader) {
    return objects(name, least, FileBounds.MOST_THINGS, ids, reader);
  }

  /**
   * The things of a list. Each is read before the next is looked at, so that a problem counts
   * against one of them only.
   */
  <T> List<Read<T>> objects(
      String name, int least, int most, Ids ids, Function<Fields, Optional<T>> reader) {
    int before = values.problems().count();
    List<LocatedNode> items = items(name, least, most);
    if (values.problems().count() > before) {
      ids.incomplete();
    }
    List<Read<T>> things = new ArrayList<>();
    for (LocatedNode item : items) {
      if (item instanceof LocatedNode.Members members) {
        Fields fields = new Fields(members, Words.a(ids.kind()), values);
        reader.apply(fields).ifPresent(thing -> things.add(new Read<>(thing, fields)));
      } else {
        ids.incomplete();
        String allowed = Words.a(ids.kind()) + " is an object in braces";
        values.problems().add(item.place(), item.words(), allowed, "correct it");
      }
    }
    return things;
  }

  Optional<Fields> object(String name, String kind) {
    return typed(name, LocatedNode.Members.class, '"' + name + "\" is an object in braces")
        .map(members -> new Fields(members, Words.a(kind), values));
  }

  /** Builds the thing if nothing was wrong in it, and remarks on fields nobody asked for. */
  <T> Optional<T> finish(Supplier<T> thing) {
    for (String name : unasked()) {
      remark(nameOf(name), unknown(name), "it is not read", "remove it or correct its name");
    }
    return sound() ? Optional.of(thing.get()) : Optional.empty();
  }

  /** As {@link #finish}, but fields nobody asked for are problems: the file's form is fixed. */
  <T> Optional<T> finishStrictly(Supplier<T> thing) {
    for (String name : unasked()) {
      report(nameOf(name), unknown(name), "a plan has no such field", "correct its name");
    }
    return sound() ? Optional.of(thing.get()) : Optional.empty();
  }

  private String unknown(String name) {
    return "an unknown field \"" + Quote.shortened(name) + '"' + Nearest.hint(name, asked);
  }

  boolean sound() {
    return problemCount() == problemsBefore;
  }

  /** Problems of the whole job so far, to see whether a part added any. */
  int problemCount() {
    return values.problems().count();
  }

  void report(Place place, String found, String allowed, String wayOut) {
    values.problems().add(place, found, allowed, wayOut);
  }

  void remark(Place place, String found, String allowed, String wayOut) {
    values.problems().remark(place, found, allowed, wayOut);
  }

  /** Whether sizes may be held against each other; if not, bare numbers may be off by a unit. */
  boolean unitsKnown() {
    return values.unitsKnown();
  }

  /** A length as the job's people write it. */
  String length(double metres) {
    return values.figures().length(metres);
  }

  /** Any quantity as the job's people write it. */
  String figure(Measure measure, double si) {
    return values.figures().of(measure, si);
  }

  private List<String> unasked() {
    return node.fields().keySet().stream().filter(n -> !asked.contains(n)).toList();
  }
}
