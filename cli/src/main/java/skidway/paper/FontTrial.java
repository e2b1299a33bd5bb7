package skidway.paper;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.GlyphTable;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Puts letters of a font into a PDF that nobody sees. A font may be read without a complaint and
 * still lack what a PDF needs of it, such as its OS/2 table; better known before a page is printed.
 */
final class FontTrial {
  private FontTrial() {}

  /** Whether a PDF can be printed with what every text needs of a font. */
  static boolean prints(FontSource font) {
    return prints(font, List.of());
  }

  /**
   * Whether a PDF can be printed with these letters of a font.
   *
   * @param letters code points that the font has
   */
  static boolean prints(FontSource font, List<Integer> letters) {
    try (PDDocument document = new PDDocument();
        TrueTypeFont read = font.read()) {
      if (!outlinesFit(read)) {
        return false;
      }
      PDType0Font embedded = PDType0Font.load(document, read, true);
      for (int letter : letters) {
        String text = Character.toString(letter);
        embedded.encode(text);
        embedded.getStringWidth(text);
        embedded.addToSubset(letter);
      }
      embedded.subset();
      return true;
    } catch (IOException | RuntimeException damaged) {
      // The library throws whatever it stumbles over in the tables of a damaged font.
      return false;
    }
  }

  /**
   * Whether no letter's outline is longer than all of them: a damaged font may say that one takes
   * gigabytes, and the library makes room before it reads.
   */
  private static boolean outlinesFit(TrueTypeFont font) throws IOException {
    long[] begins = font.getIndexToLocation().getOffsets();
    long all = font.getTableMap().get(GlyphTable.TAG).getLength();
    return IntStream.range(1, begins.length).allMatch(i -> begins[i] - begins[i - 1] <= all);
  }
}
