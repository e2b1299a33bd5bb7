package skidway.sheet;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.CRC32;

/**
 * Five letters that change when a text is mistyped or damaged; one wrong text in 33 million gets
 * past. They find accidents, they do not stop anybody who wants to forge a tag.
 */
final class TagCheck {
  /** Without I, L, O and U, which are misread for 1, 0 and V. */
  private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  private static final int LETTERS = 5;

  private TagCheck() {}

  static String letters(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    long rest = crc.getValue();
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < LETTERS; i++) {
      out.append(ALPHABET.charAt((int) (rest & 31)));
      rest >>= 5;
    }
    return out.toString();
  }

  /** Whether typed letters are these, with small letters and look-alikes forgiven. */
  static boolean fits(String typed, String text) {
    String plain =
        typed.toUpperCase(Locale.ROOT).replace('O', '0').replace('I', '1').replace('L', '1');
    return plain.equals(letters(text));
  }
}
