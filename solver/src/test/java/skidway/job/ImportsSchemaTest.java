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
  private static final SavedList LIST =
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
    ImportsFile.read(new SourceFile("imports.json", text), problems);
    return problems.count() == 0;
  }

  @Test
  void whatIsWrittenIsTakenAndReadBack() {
    String text = ImportsFile.text(List.of(LIST));
    assertThat(schemaTakes(text)).isTrue();
    assertThat(ImportsFile.read(new SourceFile("imports.json", text), new Problems()))
        .containsExactly(LIST);
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
    String text = ImportsFile.text(List.of(LIST));
    assertThat(text).contains(sound);
    String wrong = text.replace(sound, spoiled);
    assertThat(schemaTakes(wrong)).as("schema").isFalse();
    assertThat(readerTakes(wrong)).as("reader").isFalse();
  }
}
