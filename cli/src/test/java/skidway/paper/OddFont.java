package skidway.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Makes fonts that have a letter which our own lack, by giving one of our letters its number. */
public final class OddFont {
  private static final int GLYPH_OF_X = 59;

  private OddFont() {}

  /** A font that has lost its OS/2 table, without which none goes into a PDF. */
  public static Path withoutOs2(Path file) throws IOException {
    byte[] font = Files.readAllBytes(with(0x6728, file));
    return Files.write(file, without(tables(font).indexOf("OS/2"), font));
  }

  /** A font that says of one letter that its outline takes two gigabytes. */
  static Path withHugeLetter(int letter, Path file) throws IOException {
    byte[] font = Files.readAllBytes(with(letter, file));
    ByteBuffer bytes = ByteBuffer.wrap(font);
    int begins = bytes.getInt(entry(tables(font).indexOf("loca")) + 8);
    bytes.putInt(begins + 4 * (GLYPH_OF_X + 1), Integer.MAX_VALUE);
    return Files.write(file, font);
  }

  /** The font with the table at this place in its directory under a name that nobody looks for. */
  static byte[] without(int table, byte[] font) {
    byte[] without = font.clone();
    without[entry(table)] = '?';
    return without;
  }

  /** Names of a font's tables, in the order of its directory. */
  static List<String> tables(byte[] font) {
    List<String> tables = new ArrayList<>();
    for (int i = 0; i < ByteBuffer.wrap(font).getShort(4); i++) {
      tables.add(new String(font, entry(i), 4, StandardCharsets.US_ASCII));
    }
    return tables;
  }

  /** Where a table's entry begins in the directory (OpenType specification, table directory). */
  private static int entry(int table) {
    return 12 + 16 * table;
  }

  /** Liberation Sans with its whole character map put in place of one with this letter alone. */
  static Path with(int letter, Path file) {
    try (InputStream in =
        OddFont.class.getResourceAsStream("/liberation/LiberationSans-Regular.ttf")) {
      byte[] font = in.readAllBytes();
      ByteBuffer bytes = ByteBuffer.wrap(font);
      writeMap(bytes, bytes.getInt(entry(tables(font).indexOf("cmap")) + 8), letter);
      return Files.write(file, font);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Format 12 of the OpenType specification's cmap table: one group of one letter. */
  private static void writeMap(ByteBuffer bytes, int at, int letter) {
    bytes.position(at);
    bytes.putShort((short) 0).putShort((short) 1);
    bytes.putShort((short) 3).putShort((short) 10).putInt(12);
    bytes.putShort((short) 12).putShort((short) 0).putInt(28).putInt(0).putInt(1);
    bytes.putInt(letter).putInt(letter).putInt(GLYPH_OF_X);
  }
}
