package skidway.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the pages' style sheets, which are written into the pages themselves. */
final class PageStyle {
  private PageStyle() {}

  static String css() {
    return read("packet.css");
  }

  /** Of the tags, which are cut from paper of a fixed size and share nothing with the packet. */
  static String tags() {
    return read("tags.css");
  }

  private static String read(String name) {
    try (InputStream in = PageStyle.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The style sheet " + name + " is missing.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
