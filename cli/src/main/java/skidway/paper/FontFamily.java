package skidway.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.jspecify.annotations.Nullable;

/** A font in its two weights, and which letters it has. */
final class FontFamily {
  private final String name;
  private final FontSource regular;
  private final FontSource bold;
  private @Nullable CmapLookup letters;

  /**
   * @param name that style sheets call it by
   */
  FontFamily(String name, FontSource regular, FontSource bold) {
    this.name = name;
    this.regular = regular;
    this.bold = bold;
  }

  String name() {
    return name;
  }

  /** The letters of the lighter weight; the other has the same. */
  CmapLookup letters() {
    CmapLookup known = letters;
    if (known == null) {
      try (TrueTypeFont font = regular.read()) {
        known = font.getUnicodeCmapLookup();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      letters = known;
    }
    return known;
  }

  FontSource in(boolean heavy) {
    return heavy ? bold : regular;
  }
}
