package skidway.intake;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Says whether a list writes 4990,5 or 4990.5. A comma or point is only taken for what it must be:
 * {@code 4,990} has two readings until another cell of the list shows which one its author uses.
 */
enum Decimals {
  POINT,
  COMMA,
  /** Nothing in the list tells. */
  OPEN;

  private static final Pattern NUMBER = Pattern.compile("\\d[\\d.,]*");
  private static final Pattern SPACED =
      Pattern.compile("(?<![\\d.,])(\\d{1,3})((?: \\d{3})+)(?![\\d/])");

  /** What the cells of a list show. */
  static Decimals of(Stream<String> cells) {
    boolean[] seen = new boolean[2];
    cells
        .filter(Decimals::hasMark)
        .forEach(
            cell -> {
              Matcher m = NUMBER.matcher(cell);
              while (m.find()) {
                decimalMark(m.group()).ifPresent(c -> seen[c == '.' ? 0 : 1] = true);
              }
            });
    return seen[0] == seen[1] ? OPEN : seen[0] ? POINT : COMMA;
  }

  /** The mark that a number proves to be the decimal one by itself. */
  private static Optional<Character> decimalMark(String token) {
    int end = token.length();
    while (end > 0 && (token.charAt(end - 1) == '.' || token.charAt(end - 1) == ',')) {
      end--;
    }
    String number = token.substring(0, end);
    int comma = number.lastIndexOf(',');
    int point = number.lastIndexOf('.');
    if (comma < 0 && point < 0) {
      return Optional.empty();
    }
    if (comma >= 0 && point >= 0) {
      return Optional.of(comma > point ? ',' : '.');
    }
    char mark = comma >= 0 ? ',' : '.';
    int at = Math.max(comma, point);
    boolean single = number.indexOf(mark) == at;
    if (!single) {
      return Optional.of(mark == ',' ? '.' : ',');
    }
    boolean open = number.length() - at - 1 == 3 && at <= 3 && !number.startsWith("0");
    return open ? Optional.empty() : Optional.of(mark);
  }

  /**
   * The text with points as decimal marks and none between thousands; empty if it can be either.
   */
  Optional<String> plain(String text) {
    if (!hasMark(text) && !hasThousands(text)) {
      return Optional.of(text); // most cells of most lists
    }
    String spaced =
        SPACED
            .matcher(text.replace('\u00a0', ' ').replace('\u202f', ' '))
            .replaceAll(m -> m.group(1) + m.group(2).replace(" ", ""));
    StringBuilder plain = new StringBuilder();
    Matcher m = NUMBER.matcher(spaced);
    while (m.find()) {
      Optional<String> number = number(m.group());
      if (number.isEmpty()) {
        return Optional.empty();
      }
      m.appendReplacement(plain, number.get());
    }
    m.appendTail(plain);
    return Optional.of(plain.toString());
  }

  private static boolean hasMark(String text) {
    return text.indexOf(',') >= 0 || text.indexOf('.') >= 0;
  }

  /** Whether a space may stand between thousands. */
  private static boolean hasThousands(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\u00a0' || c == '\u202f' || (c == ' ' && Digits.at(text, i + 1) >= 3)) {
        return true;
      }
    }
    return false;
  }

  private Optional<String> number(String token) {
    if (token.indexOf(',') < 0 && token.indexOf('.') < 0) {
      return Optional.of(token);
    }
    Optional<Character> proven = decimalMark(token);
    char decimal;
    if (proven.isPresent()) {
      decimal = proven.get();
    } else if (this == OPEN && token.indexOf(',') >= 0) {
      return Optional.empty();
    } else {
      decimal = this == COMMA ? ',' : '.';
    }
    char thousands = decimal == ',' ? '.' : ',';
    return Optional.of(token.replace(String.valueOf(thousands), "").replace(decimal, '.'));
  }
}
