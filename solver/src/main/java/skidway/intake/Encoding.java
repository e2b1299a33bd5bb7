package skidway.intake;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Optional;

/**
 * Finds out how a text is encoded: by its byte order mark; by the zero bytes that every other byte
 * of UTF-16 is in western texts; UTF-8 if it is sound as such; Windows-1252 otherwise, which is
 * what western spreadsheet programs write when not told (common practice).
 *
 * @param words for the report
 */
record Encoding(String text, String words) {
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  /** Bytes looked at for zeros. */
  private static final int LOOKED_AT = 4000;

  /** Decodes a file. */
  static Encoding of(String fileName, byte[] bytes, Optional<String> told) {
    if (told.isPresent()) {
      return decoded(bytes, 0, named(fileName, told.get()));
    }
    if (bytes.length >= 3 && at(bytes, 0) == 0xef && at(bytes, 1) == 0xbb && at(bytes, 2) == 0xbf) {
      return decoded(bytes, 3, StandardCharsets.UTF_8);
    }
    if (bytes.length >= 2 && at(bytes, 0) == 0xff && at(bytes, 1) == 0xfe) {
      return decoded(bytes, 2, StandardCharsets.UTF_16LE);
    }
    if (bytes.length >= 2 && at(bytes, 0) == 0xfe && at(bytes, 1) == 0xff) {
      return decoded(bytes, 2, StandardCharsets.UTF_16BE);
    }
    int even = zeros(bytes, 0);
    int odd = zeros(bytes, 1);
    int half = Math.min(bytes.length, LOOKED_AT) / 2;
    if (odd * 2 > half && even * 10 < half) {
      return decoded(bytes, 0, StandardCharsets.UTF_16LE);
    }
    if (even * 2 > half && odd * 10 < half) {
      return decoded(bytes, 0, StandardCharsets.UTF_16BE);
    }
    return isUtf8(bytes) ? decoded(bytes, 0, StandardCharsets.UTF_8) : decoded(bytes, 0, WINDOWS);
  }

  private static Charset named(String fileName, String name) {
    try {
      return Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
      throw Trouble.of(
          fileName,
          "an unknown encoding " + Trouble.quote(name),
          "encodings are named like utf-8, utf-16, windows-1250, windows-1251 or iso-8859-2",
          "name another, or leave --encoding out");
    }
  }

  private static Encoding decoded(byte[] bytes, int from, Charset charset) {
    return new Encoding(
        new String(bytes, from, bytes.length - from, charset), charset.displayName());
  }

  private static boolean isUtf8(byte[] bytes) {
    try {
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  private static int zeros(byte[] bytes, int from) {
    int zeros = 0;
    for (int i = from; i < Math.min(bytes.length, LOOKED_AT); i += 2) {
      zeros += bytes[i] == 0 ? 1 : 0;
    }
    return zeros;
  }

  private static int at(byte[] bytes, int index) {
    return bytes[index] & 0xff;
  }
}
