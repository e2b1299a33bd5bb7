package skidway.job;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Lays a JSON file out for people: objects spread over lines, a space after each field's name. */
final class JsonText {
  private JsonText() {}

  /** What is to be written. */
  interface Content {
    void into(JsonGenerator json) throws IOException;
  }

  /** The same content gives the same text, whatever the computer. */
  static String of(Content content) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      DefaultPrettyPrinter pretty =
          new DefaultPrettyPrinter(
              Separators.createDefaultInstance()
                  .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
      json.setPrettyPrinter(pretty.withObjectIndenter(new DefaultIndenter("  ", "\n")));
      content.into(json);
    } catch (IOException e) {
      throw new UncheckedIOException("Writing into memory failed.", e);
    }
    return text.append('\n').toString();
  }
}
