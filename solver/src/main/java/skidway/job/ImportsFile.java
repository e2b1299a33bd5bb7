package skidway.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import skidway.units.UnitSystem;

/** Reads {@code imports.json}: how the job's packing lists are read. */
final class ImportsFile {
  static final String FILE = "imports.json";
  static final List<String> FIELDS = List.of("format", "lists");
  static final List<String> LIST_FIELDS =
      List.of("name", "header", "columns", "mark", "decimal", "bundleSize", "constants", "calls");
  static final List<String> COLUMN_FIELDS = List.of("column", "meaning", "unit");
  private static final int MOST_LISTS = 100;
  private static final int MOST_COLUMNS = 1000;
  private static final String A_TEXT = "it is a text in double quotes";

  private ImportsFile() {}

  static List<SavedList> read(LocatedNode.Members tree, Problems problems) {
    Fields f = new Fields(tree, "imports", new Values(problems, UnitSystem.METRIC, false));
    Format.check(f);
    List<Read<SavedList>> lists =
        f.objects("lists", 0, MOST_LISTS, new Ids("list", problems), l -> list(l, problems));
    f.finish(() -> lists);
    return Read.values(lists);
  }

  private static Optional<SavedList> list(Fields f, Problems problems) {
    String name = text(f, "name").orElse("");
    List<String> header = f.items("header", 1, MOST_COLUMNS).stream().map(n -> text(f, n)).toList();
    List<Read<SavedList.Column>> columns =
        f.objects("columns", 0, MOST_COLUMNS, new Ids("column", problems), ImportsFile::column);
    Optional<String> mark = f.has("mark") ? text(f, "mark") : Optional.empty();
    Optional<String> decimal = f.has("decimal") ? text(f, "decimal") : Optional.empty();
    OptionalInt bundleSize =
        f.has("bundleSize")
            ? OptionalInt.of((int) f.quantity("bundleSize", Bounds.POSITION))
            : OptionalInt.empty();
    Map<String, String> constants = texts(f, "constants");
    Map<String, String> calls = texts(f, "calls");
    return f.finish(
        () ->
            new SavedList(
                name, header, Read.values(columns), mark, decimal, bundleSize, constants, calls));
  }

  private static Optional<SavedList.Column> column(Fields f) {
    int number = (int) f.quantity("column", Bounds.POSITION);
    String meaning = text(f, "meaning").orElse("");
    Optional<String> unit = f.has("unit") ? text(f, "unit") : Optional.empty();
    return f.finish(() -> new SavedList.Column(number, meaning, unit));
  }

  private static Map<String, String> texts(Fields f, String name) {
    Map<String, String> texts = new LinkedHashMap<>();
    if (f.has(name)) {
      f.object(name, name)
          .ifPresent(o -> o.names().forEach(n -> texts.put(n, text(o, n).orElse(""))));
    }
    return texts;
  }

  private static Optional<String> text(Fields f, String name) {
    return f.typed(name, LocatedNode.Text.class, A_TEXT).map(LocatedNode.Text::value);
  }

  private static String text(Fields f, LocatedNode node) {
    if (node instanceof LocatedNode.Text text) {
      return text.value();
    }
    f.report(node.place(), node.words(), A_TEXT, "correct it");
    return "";
  }
}
