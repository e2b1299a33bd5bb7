package skidway.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one document. Each is put into the file once, with the letters used only. */
final class Letters {
  /** Shown for a letter that no font has. */
  static final int REPLACEMENT = '\u25A1';

  private final PDDocument document;
  private final FontShelf shelf;
  private final Map<String, PDType0Font> fonts = new HashMap<>();

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
      return PDType0Font.load(document, family.in(bold).read(), true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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
