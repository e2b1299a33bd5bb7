package skidway.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The published forms of the JSON files (JSON Schema, draft 2020-12). A schema tells form, not
 * sense: that names are known, outlines go round something and sizes are believable is for the
 * readers to judge.
 */
public final class Schemas {
  /** What there is a schema of. */
  public static final List<String> NAMES = List.of("job", "site", "plan", "waves", "imports");

  private Schemas() {}

  /** The schema of one of {@link #NAMES}. */
  public static String of(String name) {
    try (InputStream in = Schemas.class.getResourceAsStream("/skidway/schema/" + name + ".json")) {
      if (in == null) {
        throw new IllegalArgumentException("There is no schema of " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("A file of this program cannot be read.", e);
    }
  }
}
