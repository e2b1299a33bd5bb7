package skidway.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Joins what was told anew with a file that somebody may have changed by hand. What is told wins
 * where the file still says what was told before; what only the file says is kept; where both
 * changed, a person decides. Things of a list are the same when their ids are.
 */
final class SiteMerge {
  private final Problems problems;
  private final List<String> kept = new ArrayList<>();

  SiteMerge(Problems problems) {
    this.problems = problems;
  }

  /** A sentence for each thing that only the file says. */
  List<String> kept() {
    return kept;
  }

  /**
   * The joined file.
   *
   * @param before what was told the last time, when that is known
   */
  LocatedNode.Members merge(
      LocatedNode.Members told, LocatedNode.Members file, Optional<LocatedNode.Members> before) {
    return members("", told, file, before);
  }

  private LocatedNode.Members members(
      String path,
      LocatedNode.Members told,
      LocatedNode.Members file,
      Optional<LocatedNode.Members> before) {
    Map<String, LocatedNode> fields = new LinkedHashMap<>();
    told.fields()
        .forEach(
            (name, value) ->
                fields.put(
                    name, joined(said(path, name), value, field(file, name), field(before, name))));
    file.fields()
        .forEach(
            (name, value) -> {
              if (!fields.containsKey(name)
                  && keeps(said(path, name), value, field(before, name))) {
                fields.put(name, value);
              }
            });
    Map<String, Place> names = new LinkedHashMap<>();
    fields.forEach((name, value) -> names.put(name, value.place()));
    return new LocatedNode.Members(told.place(), fields, names);
  }

  private LocatedNode joined(
      String path, LocatedNode told, Optional<LocatedNode> inFile, Optional<LocatedNode> before) {
    if (inFile.isEmpty() || same(told, inFile.get())) {
      return told;
    }
    LocatedNode file = inFile.get();
    if (told instanceof LocatedNode.Members t && file instanceof LocatedNode.Members f) {
      return members(path, t, f, before.flatMap(SiteMerge::asMembers));
    }
    if (told instanceof LocatedNode.Items t
        && file instanceof LocatedNode.Items f
        && named(t)
        && named(f)) {
      return things(path, t, f, before.map(SiteMerge::byId).orElse(Map.of()));
    }
    if (before.isPresent() && same(file, before.get())) {
      return told;
    }
    if (before.isPresent() && same(told, before.get())) {
      keep(path, file);
      return file;
    }
    problems.add(
        file.place(),
        file.words() + " as " + path,
        "the description says " + told.words() + " for it, and nobody can tell which is newer",
        "say it in the description and remove it here, or give up what the file says with"
            + " --replace");
    return told;
  }

  private LocatedNode things(
      String path,
      LocatedNode.Items told,
      LocatedNode.Items file,
      Map<String, LocatedNode> before) {
    Map<String, LocatedNode> inFile = byId(file);
    Map<String, LocatedNode> all = new LinkedHashMap<>();
    byId(told)
        .forEach(
            (id, thing) ->
                all.put(
                    id,
                    joined(
                        path + " \"" + id + '"',
                        thing,
                        Optional.ofNullable(inFile.get(id)),
                        Optional.ofNullable(before.get(id)))));
    inFile.forEach(
        (id, thing) -> {
          if (!all.containsKey(id)
              && keeps(path + " \"" + id + '"', thing, Optional.ofNullable(before.get(id)))) {
            all.put(id, thing);
          }
        });
    return new LocatedNode.Items(told.place(), List.copyOf(all.values()));
  }

  /** Whether what is told no longer, or never was, is somebody's own. */
  private boolean keeps(String path, LocatedNode value, Optional<LocatedNode> before) {
    if (before.isPresent() && same(value, before.get())) {
      return false; // it was told once and is told no longer
    }
    keep(path, value);
    return true;
  }

  private void keep(String path, LocatedNode value) {
    kept.add("Kept from " + SiteReader.FILE + ", " + value.place().words() + ": " + path + ".");
  }

  private static String said(String path, String name) {
    return path.isEmpty() ? '"' + name + '"' : '"' + name + "\" of " + path;
  }

  private static Optional<LocatedNode> field(LocatedNode.Members node, String name) {
    return Optional.ofNullable(node.fields().get(name));
  }

  private static Optional<LocatedNode> field(Optional<LocatedNode.Members> node, String name) {
    return node.flatMap(n -> field(n, name));
  }

  private static Optional<LocatedNode.Members> asMembers(LocatedNode node) {
    return node instanceof LocatedNode.Members members ? Optional.of(members) : Optional.empty();
  }

  /** Whether every entry has an id of its own. */
  private static boolean named(LocatedNode.Items items) {
    return byId(items).size() == items.nodes().size();
  }

  private static Map<String, LocatedNode> byId(LocatedNode node) {
    Map<String, LocatedNode> things = new LinkedHashMap<>();
    if (node instanceof LocatedNode.Items items) {
      for (LocatedNode item : items.nodes()) {
        if (asMembers(item).flatMap(m -> field(m, "id")).orElse(item)
            instanceof LocatedNode.Text id) {
          things.putIfAbsent(id.value(), item);
        }
      }
    }
    return things;
  }

  /** Whether two say the same, wherever they stand. */
  private static boolean same(LocatedNode a, LocatedNode b) {
    return plain(a).equals(plain(b));
  }

  private static Object plain(LocatedNode node) {
    if (node instanceof LocatedNode.Members members) {
      Map<String, Object> fields = new LinkedHashMap<>();
      members.fields().forEach((name, value) -> fields.put(name, plain(value)));
      return fields;
    }
    if (node instanceof LocatedNode.Items items) {
      return items.nodes().stream().map(SiteMerge::plain).toList();
    }
    return node instanceof LocatedNode.Text text ? List.of(text.value()) : node.words();
  }
}
