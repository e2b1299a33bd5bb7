package skidway.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The families a page is set in, the first that has a letter taking it. The first family has the
 * widths the drawings reckon with and holds Latin, Greek, Cyrillic and Hebrew; the second has most
 * other alphabets, Arabic among them.
 */
final class FontShelf {
  private static final String FIRST = "/liberation/LiberationSans-";
  private static final String SECOND = "/net/sf/jasperreports/fonts/dejavu/DejaVuSans";

  private final List<FontFamily> families = new ArrayList<>();

  private FontShelf() {}

  /** The families that come with the program. */
  static FontShelf ours() {
    FontShelf shelf = new FontShelf();
    shelf.add(() -> open(FIRST + "Regular.ttf"), () -> open(FIRST + "Bold.ttf"));
    shelf.add(() -> open(SECOND + ".ttf"), () -> open(SECOND + "-Bold.ttf"));
    return shelf;
  }

  private void add(FontSource regular, FontSource bold) {
    families.add(new FontFamily("Skidway " + families.size(), regular, bold));
  }

  /** Puts a family behind the others; it has one weight, which stands for both. */
  void add(FontSource found) {
    add(found, found);
  }

  List<FontFamily> families() {
    return families;
  }

  /** Whether any family has this letter. */
  boolean has(int codePoint) {
    return families.stream().anyMatch(f -> has(f.letters(), codePoint));
  }

  static boolean has(CmapLookup letters, int codePoint) {
    return letters.getGlyphId(codePoint) > 0;
  }

  private static TrueTypeFont open(String resource) {
    try (InputStream in = FontShelf.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("The font " + resource + " is missing.");
      }
      return FontFile.plain(new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
