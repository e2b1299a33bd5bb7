package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.site.Point;

/** Walks a drawing's path of straight lines; one with curves, or in several parts, is none. */
final class StraightPath {
  private static final Pattern TOKEN =
      Pattern.compile(
          "\\G[\\s,]*(?:([A-Za-z])|([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?))");

  private final List<Point> corners = new ArrayList<>();
  private char command;
  private double x;
  private double y;
  private boolean closed;

  private StraightPath() {}

  /** Its outline; empty if it is none. */
  static Optional<DrawnOutline> outline(String d) {
    StraightPath path = new StraightPath();
    List<Double> numbers = new ArrayList<>();
    Matcher token = TOKEN.matcher(d);
    int end = 0;
    while (token.find()) {
      end = token.end();
      if (token.group(1) == null) {
        numbers.add(Double.parseDouble(token.group(2)));
        if (!path.step(numbers)) {
          return Optional.empty();
        }
      } else if (numbers.isEmpty() && !path.closed) {
        path.begin(token.group(1).charAt(0));
      } else {
        return Optional.empty();
      }
    }
    boolean whole = d.substring(end).isBlank() && numbers.isEmpty();
    return whole ? Optional.of(new DrawnOutline(path.corners, path.closed)) : Optional.empty();
  }

  private void begin(char letter) {
    command = letter;
    closed = letter == 'Z' || letter == 'z';
  }

  /** Goes on when enough numbers are there; whether the path is still one of straight lines. */
  private boolean step(List<Double> numbers) {
    char absolute = Character.toUpperCase(command);
    boolean from = Character.isLowerCase(command);
    double first = numbers.get(0);
    if (absolute == 'H') {
      x = from ? x + first : first;
    } else if (absolute == 'V') {
      y = from ? y + first : first;
    } else if (absolute != 'L' && (absolute != 'M' || !corners.isEmpty())) {
      return false;
    } else if (numbers.size() < 2) {
      return true;
    } else {
      x = from ? x + first : first;
      y = from ? y + numbers.get(1) : numbers.get(1);
      command = from ? 'l' : 'L'; // more pairs after M are lines
    }
    numbers.clear();
    if (!(Math.abs(x) < 1e9) || !(Math.abs(y) < 1e9)) {
      return false;
    }
    corners.add(new Point(x, -y));
    return true;
  }
}
