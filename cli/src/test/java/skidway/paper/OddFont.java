package skidway.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Makes a font that has a letter which our own lack, by giving one of our letters its number. */
final class OddFont {
  private OddFont() {}

  /** Liberation Sans with its whole character map put in place of one with this letter alone. */
  static Path with(int letter, Path file) {
    try (InputStream in =
        OddFont.class.getResourceAsStream("/liberation/LiberationSans-Regular.ttf")) {
      byte[] font = in.readAllBytes();
      ByteBuffer bytes = ByteBuffer.wrap(font);
      for (int i = 0; i < bytes.getShort(4); i++) {
        int entry = 12 + 16 * i;
        String tag = new String(font, entry, 4, StandardCharsets.US_ASCII);
        if (tag.equals("cmap")) {
          writeMap(bytes, bytes.getInt(entry + 8), letter);
        }
      }
      return Files.write(file, font);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Format 12 of the OpenType specification's cmap table: one group of one letter. */
  private static void writeMap(ByteBuffer bytes, int at, int letter) {
    int glyphOfX = 59;
    bytes.position(at);
    bytes.putShort((short) 0).putShort((short) 1);
    bytes.putShort((short) 3).putShort((short) 10).putInt(12);
    bytes.putShort((short) 12).putShort((short) 0).putInt(28).putInt(0).putInt(1);
    bytes.putInt(letter).putInt(letter).putInt(glyphOfX);
  }
}
