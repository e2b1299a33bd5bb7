package skidway.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.fontbox.ttf.OpenTypeFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeCollection;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** Reads the fonts in a file on disk: one, or several in a collection. */
final class FontFile {
  private static final String COLLECTION = "ttcf";

  private FontFile() {}

  static boolean looksLikeOne(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".ttf") || name.endsWith(".ttc");
  }

  /**
   * The fonts in a file that can be put into a PDF.
   *
   * @throws IOException if the file cannot be read or is no font
   */
  static List<FontSource> fonts(Path file) throws IOException {
    List<String> names = new ArrayList<>();
    if (start(file).equals(COLLECTION)) {
      try (TrueTypeCollection all = new TrueTypeCollection(file.toFile())) {
        all.processAllFonts(
            font -> {
              if (embeds(font)) {
                names.add(font.getName());
              }
            });
      }
      return names.stream().map(name -> (FontSource) () -> read(file, name)).toList();
    }
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes(file)))) {
      return embeds(font) ? List.of(() -> read(file, "")) : List.of();
    }
  }

  /**
   * Why nothing in a file can be put into a PDF, to go on after the file's name: by how it begins
   * (OpenType specification, table directory; W3C Web Open Font Format 1 and 2).
   */
  static String whyNot(Path file) {
    try {
      return switch (start(file)) {
        case "OTTO" -> "has CFF outlines, which cannot be put into a PDF here";
        case "wOFF", "wOF2" -> "is packed for web pages, and such fonts cannot be put into a PDF";
        case COLLECTION, "true", "\0\1\0\0" ->
            "has no font that can be put into a PDF: it is damaged, has no letters by Unicode, has"
                + " CFF outlines, or its maker forbids it";
        default -> "cannot be read as a font";
      };
    } catch (IOException e) {
      return "cannot be read";
    }
  }

  private static String start(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return new String(in.readNBytes(4), StandardCharsets.ISO_8859_1);
    }
  }

  /** Whether its outlines are of the kind a part of which can be embedded, and its maker allows. */
  private static boolean embeds(TrueTypeFont font) throws IOException {
    boolean outlines = !(font instanceof OpenTypeFont open && open.isPostScript());
    short restricted = 0x0002;
    boolean allowed =
        font.getOS2Windows() == null || (font.getOS2Windows().getFsType() & 0x000f) != restricted;
    return outlines && allowed && font.getUnicodeCmapLookup(false) != null;
  }

  private static TrueTypeFont read(Path file, String name) {
    try {
      if (name.isEmpty()) {
        return plain(new TTFParser().parse(new RandomAccessReadBuffer(bytes(file))));
      }
      // The font reads from the collection, which stays open with it.
      @SuppressWarnings("resource")
      TrueTypeCollection all = new TrueTypeCollection(file.toFile());
      TrueTypeFont font = all.getFontByName(name);
      if (font == null) {
        throw new IllegalStateException(file + " has no font " + name + " any more.");
      }
      return plain(font);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Without the font's own ligatures, which take long and make a text harder to find. */
  static TrueTypeFont plain(TrueTypeFont font) {
    font.setEnableGsub(false);
    return font;
  }

  private static byte[] bytes(Path file) throws IOException {
    return Files.readAllBytes(file);
  }
}
