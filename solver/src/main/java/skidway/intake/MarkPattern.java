package skidway.intake;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/**
 * Takes piece marks apart: {@code {wall}-{course}-{position}}, {@code
 * W{wall}.C{course:2}.{position:2}}. A figure after a colon is the number of digits; what stands
 * between the braces of two parts stands so in the mark. {@code {any}} passes over letters and
 * figures that mean nothing here.
 */
record MarkPattern(String text, Pattern regex) {
  private static final Pattern PART =
      Pattern.compile("\\{(wall|course|position|any)(?::([1-9]))?}");
  private static final Pattern LEADING_ZEROS = Pattern.compile("^0+(?=\\d)");
  private static final String EXAMPLE =
      "a pattern is written like {wall}-{course}-{position} or {wall}{course:2}{position:2}";

  /** The parts of a mark. */
  record Parts(Map<Meaning, String> values) {}

  /** Reads a pattern. */
  static MarkPattern of(String text, String fileName) {
    Matcher part = PART.matcher(text);
    StringBuilder regex = new StringBuilder();
    int from = 0;
    while (part.find()) {
      regex.append(literal(text, from, part.start(), fileName));
      regex.append(group(part.group(1), part.group(2)));
      from = part.end();
    }
    regex.append(literal(text, from, text.length(), fileName));
    if (from == 0) {
      throw Trouble.of(
          fileName, "no part in the pattern " + Trouble.quote(text), EXAMPLE, "correct --mark");
    }
    try {
      return new MarkPattern(
          text, Pattern.compile(regex.toString(), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
    } catch (PatternSyntaxException e) {
      throw Trouble.of(
          fileName,
          "the same part twice in the pattern " + Trouble.quote(text),
          EXAMPLE,
          "correct --mark");
    }
  }

  private static String literal(String text, int from, int to, String fileName) {
    String literal = text.substring(from, to);
    if (literal.indexOf('{') >= 0 || literal.indexOf('}') >= 0) {
      throw Trouble.of(
          fileName,
          "an unknown part in the pattern " + Trouble.quote(text),
          EXAMPLE,
          "correct --mark");
    }
    return Pattern.quote(literal);
  }

  private static String group(String part, String digits) {
    return switch (part) {
      case "wall" ->
          "(?<wall>" + (digits == null ? "[\\p{L}\\p{N} ]+?" : ".{" + digits + "}") + ")";
      case "any" -> "[\\p{L}\\p{N}]" + (digits == null ? "+?" : "{" + digits + "}");
      default -> "(?<" + part + ">" + (digits == null ? "\\d{1,4}" : "\\d{" + digits + "}") + ")";
    };
  }

  /** Takes a mark apart; empty if it does not fit. */
  Optional<Parts> apart(String mark) {
    Matcher m = regex.matcher(mark);
    if (!m.matches()) {
      return Optional.empty();
    }
    Map<Meaning, String> values = new EnumMap<>(Meaning.class);
    put(values, Meaning.WALL, m);
    put(values, Meaning.COURSE, m);
    put(values, Meaning.POSITION, m);
    return Optional.of(new Parts(values));
  }

  boolean has(Meaning meaning) {
    return text.contains("{" + meaning.word());
  }

  private void put(Map<Meaning, String> values, Meaning meaning, Matcher m) {
    if (has(meaning)) {
      String value = m.group(meaning.word());
      values.put(
          meaning,
          meaning == Meaning.WALL ? value.strip() : LEADING_ZEROS.matcher(value).replaceFirst(""));
    }
  }
}
