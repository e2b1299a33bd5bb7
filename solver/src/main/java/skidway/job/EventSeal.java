package skidway.job;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Ends every line of the events file with a check value over what the line says and over the check
 * value before it, so that a line that was torn, edited, exchanged or taken out is found. It guards
 * against accidents, not against somebody who computes it anew.
 *
 * @param content the line without the check value
 * @param check the first 16 hexadecimal digits of SHA-256 over the check before, a line feed and
 *     the content
 */
record EventSeal(String content, String check) {
  /** The check before the first line. */
  static final String START = "";

  private static final Pattern LINE =
      Pattern.compile("(\\{.*),\"check\":\"([0-9a-f]{16})\"}(.*)", Pattern.DOTALL);

  /** The whole line, without its end. */
  static String seal(String object, String checkBefore) {
    String content = object.substring(0, object.length() - 1);
    return content + ",\"check\":\"" + check(content, checkBefore) + "\"}";
  }

  /** Takes a sealed line apart; empty when it does not have that form. */
  static Optional<EventSeal> of(String line) {
    return Optional.of(LINE.matcher(line))
        .filter(m -> m.matches() && m.group(3).isEmpty())
        .map(m -> new EventSeal(m.group(1), m.group(2)));
  }

  /** Whether a text goes on after a check value; the beginning of a line never does. */
  static boolean goesOn(String text) {
    Matcher m = LINE.matcher(text);
    return m.matches() && !m.group(3).isEmpty();
  }

  boolean holds(String checkBefore) {
    return check.equals(check(content, checkBefore));
  }

  private static String check(String content, String checkBefore) {
    byte[] bytes = (checkBefore + '\n' + content).getBytes(StandardCharsets.UTF_8);
    return Fingerprint.of(bytes).substring(0, 16);
  }
}
