package skidway.limits;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the tables that lie beside the classes: comment lines, a header, then rows of cells. */
final class CsvResource {
  private CsvResource() {}

  static List<List<String>> rows(String name) {
    InputStream in = CsvResource.class.getResourceAsStream(name);
    if (in == null) {
      throw new IllegalStateException("The table " + name + " is missing.");
    }
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> List.of(line.split(",", -1)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
