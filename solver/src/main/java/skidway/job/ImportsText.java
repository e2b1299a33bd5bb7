package skidway.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes {@code imports.json} anew. Fields of the file before that its reader does not know stay:
 * those of a list with the list at its place, those of a column with its number.
 */
final class ImportsText {
  private static final Place NOWHERE = new SourceFile(ImportsFile.FILE, "").whole();

  private ImportsText() {}

  static String of(List<SavedList> lists, Optional<LocatedNode.Members> before) {
    List<LocatedNode> old = before.map(b -> items(b, "lists")).orElse(List.of());
    Map<String, LocatedNode> fields = new LinkedHashMap<>();
    fields.put("format", number(Format.CURRENT));
    LocatedNode[] written = new LocatedNode[lists.size()];
    for (int i = 0; i < written.length; i++) {
      Optional<LocatedNode> same = i < old.size() ? Optional.of(old.get(i)) : Optional.empty();
      written[i] = list(lists.get(i), same.flatMap(ImportsText::members));
    }
    fields.put("lists", new LocatedNode.Items(NOWHERE, List.of(written)));
    return JsonLines.of(keeping(fields, before, ImportsFile.FIELDS));
  }

  private static LocatedNode list(SavedList list, Optional<LocatedNode.Members> before) {
    Map<String, LocatedNode> fields = new LinkedHashMap<>();
    fields.put("name", text(list.name()));
    fields.put(
        "header",
        new LocatedNode.Items(NOWHERE, list.header().stream().map(ImportsText::text).toList()));
    List<LocatedNode> old = before.map(b -> items(b, "columns")).orElse(List.of());
    fields.put(
        "columns",
        new LocatedNode.Items(
            NOWHERE, list.columns().stream().map(c -> column(c, numbered(old, c))).toList()));
    list.mark().ifPresent(mark -> fields.put("mark", text(mark)));
    list.decimal().ifPresent(decimal -> fields.put("decimal", text(decimal)));
    list.bundleSize().ifPresent(size -> fields.put("bundleSize", number(size)));
    if (!list.constants().isEmpty()) {
      fields.put("constants", texts(list.constants()));
    }
    if (!list.calls().isEmpty()) {
      fields.put("calls", texts(list.calls()));
    }
    return keeping(fields, before, ImportsFile.LIST_FIELDS);
  }

  private static LocatedNode column(SavedList.Column column, Optional<LocatedNode.Members> before) {
    Map<String, LocatedNode> fields = new LinkedHashMap<>();
    fields.put("column", number(column.number()));
    fields.put("meaning", text(column.meaning()));
    column.unit().ifPresent(unit -> fields.put("unit", text(unit)));
    return keeping(fields, before, ImportsFile.COLUMN_FIELDS);
  }

  /** The object with the unknown fields of the one before at its end. */
  private static LocatedNode.Members keeping(
      Map<String, LocatedNode> fields, Optional<LocatedNode.Members> before, List<String> known) {
    before.ifPresent(
        old ->
            old.fields()
                .forEach(
                    (name, value) -> {
                      if (!known.contains(name)) {
                        fields.put(name, value);
                      }
                    }));
    return new LocatedNode.Members(NOWHERE, fields, Map.of());
  }

  private static Optional<LocatedNode.Members> numbered(
      List<LocatedNode> columns, SavedList.Column column) {
    return columns.stream()
        .flatMap(c -> members(c).stream())
        .filter(
            c ->
                c.fields().get("column") instanceof LocatedNode.Figure figure
                    && figure.value() == column.number())
        .findFirst();
  }

  private static List<LocatedNode> items(LocatedNode.Members of, String name) {
    return of.fields().get(name) instanceof LocatedNode.Items items ? items.nodes() : List.of();
  }

  private static Optional<LocatedNode.Members> members(LocatedNode node) {
    return node instanceof LocatedNode.Members members ? Optional.of(members) : Optional.empty();
  }

  private static LocatedNode text(String value) {
    return new LocatedNode.Text(NOWHERE, value);
  }

  private static LocatedNode texts(Map<String, String> values) {
    Map<String, LocatedNode> fields = new LinkedHashMap<>();
    values.forEach((name, value) -> fields.put(name, text(value)));
    return new LocatedNode.Members(NOWHERE, fields, Map.of());
  }

  private static LocatedNode number(int value) {
    return new LocatedNode.Figure(NOWHERE, Integer.toString(value), value);
  }
}
