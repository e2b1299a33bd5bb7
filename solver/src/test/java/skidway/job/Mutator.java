package skidway.job;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/** Changes a text at a few random places, as a slip of the hand or a broken disk does. */
public final class Mutator {
  private static final List<String> ODD =
      List.of(
          "NaN",
          "-1",
          "1e999",
          "-0.0",
          "\"",
          "\"\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ";",
          "#",
          ":",
          "\t",
          "\r",
          "\n",
          "null",
          "true",
          "'",
          "0",
          "99999999999999999999",
          "\u0000",
          "\u00e9",
          "\ud83e\udeb5",
          "4,5",
          "%",
          "W1",
          "B01",
          "\\u",
          "3 stone",
          "\u2032",
          "\u00bd",
          " 1/0",
          "from",
          "close",
          "\ufffd");

  private Mutator() {}

  /** One to three cuts, copies, exchanges, odd texts or odd bytes. */
  public static byte[] mutated(String text, Random random) {
    StringBuilder s = new StringBuilder(text);
    int changes = 1 + random.nextInt(3);
    for (int i = 0; i < changes && s.length() > 2; i++) {
      int from = random.nextInt(s.length());
      int to = Math.min(s.length(), from + 1 + random.nextInt(random.nextInt(10) == 0 ? 400 : 8));
      int at = random.nextInt(s.length());
      switch (random.nextInt(5)) {
        case 0 -> s.delete(from, to);
        case 1 -> s.insert(at, s.substring(from, to));
        case 2 -> s.replace(from, to, ODD.get(random.nextInt(ODD.size())));
        case 3 -> s.insert(at, ODD.get(random.nextInt(ODD.size())));
        default -> s.setCharAt(at, (char) (32 + random.nextInt(95)));
      }
    }
    byte[] bytes = s.toString().getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(10) == 0 && bytes.length > 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}
