package skidway.job;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Builds the tree of a JSON file with the place of every node. Depth, number and text lengths are
 * bounded. A field written twice is reported at its second name; NaN and Infinity get through to
 * where the value is judged, so that they do not hide the file's other problems.
 */
final class JsonTree {
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(FileBounds.DEEPEST)
                  .maxNumberLength(FileBounds.LONGEST_NUMBER)
                  .maxNameLength(FileBounds.LONGEST_FIELD_NAME)
                  .maxStringLength(FileBounds.LONGEST_TEXT)
                  .build())
          .build();

  private final SourceFile file;
  private final Problems problems;
  private final JsonParser parser;
  private final int linesBefore;

  private JsonTree(SourceFile file, Problems problems, JsonParser parser, int linesBefore) {
    this.file = file;
    this.problems = problems;
    this.parser = parser;
    this.linesBefore = linesBefore;
  }

  /** The object that the file holds; empty after a problem. */
  static Optional<LocatedNode.Members> read(SourceFile file, Problems problems) {
    return read(file, file.text(), 0, problems);
  }

  /** The object that one line of the file holds; empty after a problem. */
  static Optional<LocatedNode.Members> readLine(SourceFile file, int line, Problems problems) {
    return read(file, file.line(line), line - 1, problems);
  }

  private static Optional<LocatedNode.Members> read(
      SourceFile file, String text, int linesBefore, Problems problems) {
    try (JsonParser parser = JSON.createParser(text)) {
      JsonTree tree = new JsonTree(file, problems, parser, linesBefore);
      try {
        return tree.root();
      } catch (JsonProcessingException e) {
        problems.add(
            tree.place(e.getLocation() == null ? parser.currentLocation() : e.getLocation()),
            "text that is not JSON (" + reason(e) + ")",
            "the file is JSON: {\"name\": value, ...} with texts and names in double quotes",
            "correct it there or just before; the rest of the file was not read");
        return Optional.empty();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("Reading from memory failed.", e);
    }
  }

  private Optional<LocatedNode.Members> root() throws IOException {
    LocatedNode root = node(parser.nextToken());
    if (parser.nextToken() != null) {
      problems.add(here(), "more text after the end", "the file is one object", "remove the rest");
      return Optional.empty();
    }
    if (root instanceof LocatedNode.Members members) {
      return Optional.of(members);
    }
    problems.add(
        root.place(), root.words(), "the file is an object in braces", "put braces round it");
    return Optional.empty();
  }

  private LocatedNode node(JsonToken token) throws IOException {
    Place place = here();
    return switch (token) {
      case START_OBJECT -> members(place);
      case START_ARRAY -> items(place);
      case VALUE_STRING -> new LocatedNode.Text(place, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(place, parser.getText());
      case VALUE_TRUE -> new LocatedNode.Flag(place, true);
      case VALUE_FALSE -> new LocatedNode.Flag(place, false);
      case VALUE_NULL -> new LocatedNode.Nothing(place);
      case NOT_AVAILABLE, FIELD_NAME, END_OBJECT, END_ARRAY, VALUE_EMBEDDED_OBJECT ->
          throw new IllegalStateException("The parser gave " + token + " for a value.");
    };
  }

  private LocatedNode members(Place place) throws IOException {
    Map<String, LocatedNode> fields = new LinkedHashMap<>();
    Map<String, Place> names = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      Place at = here();
      LocatedNode value = node(parser.nextToken());
      Place first = names.putIfAbsent(name, at);
      if (first == null) {
        fields.put(name, value);
      } else {
        problems.add(
            at,
            "a second field \"" + Quote.shortened(name) + '"',
            "the first is in " + first.words() + ", and a field stands once",
            "remove one of them");
      }
    }
    return new LocatedNode.Members(place, fields, names);
  }

  private LocatedNode items(Place place) throws IOException {
    List<LocatedNode> nodes = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      nodes.add(node(t));
    }
    return new LocatedNode.Items(place, nodes);
  }

  private static LocatedNode number(Place place, String text) {
    double value =
        switch (text) {
          case "NaN", "INF", "+INF", "-INF" -> Double.NaN;
          default -> Double.parseDouble(text);
        };
    return new LocatedNode.Figure(place, text, value);
  }

  private Place here() {
    return place(parser.currentTokenLocation());
  }

  private Place place(JsonLocation location) {
    return file.at(linesBefore + location.getLineNr(), location.getColumnNr());
  }

  /** The parser's own words, without its notes about where and about its own settings. */
  private static String reason(JsonProcessingException e) {
    return e.getOriginalMessage()
        .replaceFirst(" \\(start marker at.*", "")
        .replaceFirst(", from `[^`]*`", "");
  }
}
