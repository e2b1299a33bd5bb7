package skidway.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the page's style sheet, which is written into the page itself. */
final class PageStyle {
  private static final String NAME = "packet.css";

  private PageStyle() {}

  static String css() {
    try (InputStream in = PageStyle.class.getResourceAsStream(NAME)) {
      if (in == null) {
        throw new IllegalStateException("The style sheet " + NAME + " is missing.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
