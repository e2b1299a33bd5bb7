package skidway.job;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import skidway.units.UnitSystem;

/** Reads and writes {@code imports.json}: how the job's packing lists are read. */
final class ImportsFile {
  static final String FILE = "imports.json";
  private static final int MOST_LISTS = 100;
  private static final int MOST_COLUMNS = 1000;
  private static final String A_TEXT = "it is a text in double quotes";

  private ImportsFile() {}

  static List<SavedList> read(SourceFile file, Problems problems) {
    Optional<LocatedNode.Members> tree = JsonTree.read(file, problems);
    if (tree.isEmpty()) {
      return List.of();
    }
    Fields f = new Fields(tree.get(), "imports", new Values(problems, UnitSystem.METRIC, false));
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

  static String text(List<SavedList> lists) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      DefaultPrettyPrinter pretty =
          new DefaultPrettyPrinter(
              Separators.createDefaultInstance()
                  .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
      json.setPrettyPrinter(pretty.withObjectIndenter(new DefaultIndenter("  ", "\n")));
      json.writeStartObject();
      json.writeNumberField("format", Format.CURRENT);
      json.writeArrayFieldStart("lists");
      for (SavedList list : lists) {
        write(json, list);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("Writing into memory failed.", e);
    }
    return text.append('\n').toString();
  }

  private static void write(JsonGenerator json, SavedList list) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", list.name());
    json.writeArrayFieldStart("header");
    for (String word : list.header()) {
      json.writeString(word);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("columns");
    for (SavedList.Column column : list.columns()) {
      json.writeStartObject();
      json.writeNumberField("column", column.number());
      json.writeStringField("meaning", column.meaning());
      if (column.unit().isPresent()) {
        json.writeStringField("unit", column.unit().get());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    if (list.mark().isPresent()) {
      json.writeStringField("mark", list.mark().get());
    }
    if (list.decimal().isPresent()) {
      json.writeStringField("decimal", list.decimal().get());
    }
    if (list.bundleSize().isPresent()) {
      json.writeNumberField("bundleSize", list.bundleSize().getAsInt());
    }
    write(json, "constants", list.constants());
    write(json, "calls", list.calls());
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, String name, Map<String, String> texts)
      throws IOException {
    if (!texts.isEmpty()) {
      json.writeObjectFieldStart(name);
      for (Map.Entry<String, String> text : texts.entrySet()) {
        json.writeStringField(text.getKey(), text.getValue());
      }
      json.writeEndObject();
    }
  }
}
