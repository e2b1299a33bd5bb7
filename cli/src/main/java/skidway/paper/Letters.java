package skidway.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one document. Each is put into the file once, with the letters used only. */
final class Letters {
  /** Shown for a letter that no font has. */
  static final int REPLACEMENT = '\u25A1';

  /**
   * How high letters are taken to be over and under their line, in thousandths of their size: the
   * middle is Liberation Sans' (ascent 905, descent 212), the sum one line. The page layer sets
   * text by this box, of all families the largest, and does so evenly only where the sum is one.
   */
  private static final PDRectangle FOR_LAYOUT = new PDRectangle(0, -153.5f, 1000, 1000);

  private final PDDocument document;
  private final FontShelf shelf;
  private final Map<String, PDType0Font> fonts = new LinkedHashMap<>();
  private final Map<PDFontDescriptor, PDRectangle> boxes = new LinkedHashMap<>();

  Letters(PDDocument document, FontShelf shelf) {
    this.document = document;
    this.shelf = shelf;
  }

  FontShelf shelf() {
    return shelf;
  }

  PDType0Font font(FontFamily family, boolean bold) {
    return fonts.computeIfAbsent(family.name() + bold, key -> load(family, bold));
  }

  private PDType0Font load(FontFamily family, boolean bold) {
    try {
      PDType0Font font = PDType0Font.load(document, family.in(bold).read(), true);
      PDFontDescriptor about = font.getFontDescriptor();
      boxes.put(about, about.getFontBoundingBox());
      about.setFontBoundingBox(FOR_LAYOUT);
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Gives the fonts back what was changed for the layout; to be called before the file is saved.
   */
  void laidOut() {
    boxes.forEach(PDFontDescriptor::setFontBoundingBox);
  }

  /** A text in the order it is drawn in, cut where the font changes. */
  List<Run> runs(String text, boolean bold) {
    List<Run> runs = new ArrayList<>();
    StringBuilder run = new StringBuilder();
    FontFamily of = shelf.families().get(0);
    for (int c : ReadingOrder.leftToRight(text).codePoints().toArray()) {
      int shown = shelf.has(c) ? c : REPLACEMENT;
      FontFamily family = familyOf(shown);
      if (family != of && !run.isEmpty()) {
        runs.add(new Run(font(of, bold), run.toString()));
        run.setLength(0);
      }
      of = family;
      run.appendCodePoint(shown);
    }
    if (!run.isEmpty()) {
      runs.add(new Run(font(of, bold), run.toString()));
    }
    return runs;
  }

  private FontFamily familyOf(int codePoint) {
    return shelf.families().stream()
        .filter(f -> FontShelf.has(f.letters(), codePoint))
        .findFirst()
        .orElseThrow();
  }

  /** Letters of one font that follow each other. */
  record Run(PDType0Font font, String text) {
    /** Width in thousandths of the letters' size. */
    double width() {
      try {
        return font.getStringWidth(text);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
