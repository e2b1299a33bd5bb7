package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The schema of imports.json, its reader and its writer say the same. */
final class ImportsSchemaTest {
  static final SavedList LIST =
      new SavedList(
          "list 1",
          List.of("Mark", "Length"),
          List.of(new SavedList.Column(2, "length", Optional.of("mm"))),
          Optional.of("{wall}-{course}"),
          Optional.of("comma"),
          OptionalInt.of(20),
          Map.of("moisture", "19"),
          Map.of("North", "W1"));

  private static boolean schemaTakes(String text) {
    return new Schema("imports").wrongPlaces(Schema.tree(text)).isEmpty();
  }

  private static boolean readerTakes(String text) {
    Problems problems = new Problems();
    read(text, problems);
    return problems.count() == 0;
  }

  private static List<SavedList> read(String text, Problems problems) {
    return JsonTree.read(new SourceFile("imports.json", text), problems)
        .map(tree -> ImportsFile.read(tree, problems))
        .orElse(List.of());
  }

  @Test
  void whatIsWrittenIsTakenAndReadBack() {
    String text = ImportsText.of(List.of(LIST), Optional.empty());
    assertThat(schemaTakes(text)).isTrue();
    assertThat(read(text, new Problems())).containsExactly(LIST);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "\"format\": 1 | \"format\": 2",
        "\"lists\": | \"list\":",
        "\"name\": \"list 1\" | \"name\": 1",
        "\"Mark\" | 7",
        "\"meaning\": | \"means\":",
        "\"unit\": \"mm\" | \"unit\": true",
        "\"mark\": \"{wall}-{course}\" | \"mark\": []",
        "\"decimal\": \"comma\" | \"decimal\": {}",
        "\"moisture\": \"19\" | \"moisture\": 19",
        "\"North\": \"W1\" | \"North\": null"
      })
  void whatOneRefusesTheOtherRefuses(String sound, String spoiled) {
    String text = ImportsText.of(List.of(LIST), Optional.empty());
    assertThat(text).contains(sound);
    String wrong = text.replace(sound, spoiled);
    assertThat(schemaTakes(wrong)).as("schema").isFalse();
    assertThat(readerTakes(wrong)).as("reader").isFalse();
  }

  /** A later Skidway, or a person, may have written more than this one knows. */
  @Test
  void whatNobodyKnowsStaysWhereItWas() {
    String before =
        ImportsText.of(List.of(LIST, LIST), Optional.empty())
            .replace("\"format\": 1", "\"format\": 1, \"by\": {\"who\": [\"us\", null, true]}")
            .replaceFirst("\"name\"", "\"mill\": \"Larch Ridge\", \"name\"")
            .replaceFirst("\"column\"", "\"checked\": 2.50, \"column\"");
    LocatedNode.Members tree =
        JsonTree.read(new SourceFile("imports.json", before), new Problems()).orElseThrow();
    SavedList.Column first = LIST.columns().get(0);
    SavedList turned =
        new SavedList(
            "turned",
            LIST.header(),
            List.of(new SavedList.Column(9, "length", Optional.empty()), first),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Map.of(),
            Map.of());
    String after = ImportsText.of(List.of(turned, LIST, LIST), Optional.of(tree));
    Problems problems = new Problems();
    assertThat(read(after, problems)).containsExactly(turned, LIST, LIST);
    assertThat(problems.remarks(List.of())).hasSize(3).allMatch(r -> r.found().contains("unknown"));
    assertThat(after)
        .contains("\"by\": {\"who\": [\"us\", null, true]}")
        .contains("\"meaning\": \"" + first.meaning() + "\"")
        .containsPattern("\"column\": " + first.number() + ",[^}]*\"checked\": 2.50");
    assertThat(after.indexOf("Larch Ridge")).isBetween(0, after.indexOf("\"list 1\""));
  }
}
