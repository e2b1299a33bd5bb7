package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.site.Point;

/** Reads the numbers of a drawing's shapes: no units, no percent, a point before decimals. */
final class DrawnNumbers {
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?");

  /** No building is so large in any unit. */
  private static final double LARGEST = 1e9;

  private DrawnNumbers() {}

  /** The outline of {@code x,y x,y ...}; empty if the text is anything else. */
  static Optional<DrawnOutline> outline(String text, boolean closed) {
    List<Double> numbers = new ArrayList<>();
    Matcher m = NUMBER.matcher(text);
    int end = 0;
    while (m.find()) {
      if (!text.substring(end, m.start()).matches("[\\s,]*")) {
        return Optional.empty();
      }
      numbers.add(Double.parseDouble(m.group()));
      end = m.end();
    }
    return text.substring(end).isBlank() ? outline(numbers, closed) : Optional.empty();
  }

  /** The outline of a rectangle, whose corner may be left out; empty if it has none. */
  static Optional<DrawnOutline> rectangle(String x, String y, String width, String height) {
    List<String> texts = List.of(x.isEmpty() ? "0" : x, y.isEmpty() ? "0" : y, width, height);
    if (!texts.stream().allMatch(t -> NUMBER.matcher(t).matches())) {
      return Optional.empty();
    }
    double left = Double.parseDouble(texts.get(0));
    double top = Double.parseDouble(texts.get(1));
    double right = left + Double.parseDouble(width);
    double bottom = top + Double.parseDouble(height);
    return outline(List.of(left, top, left, bottom, right, bottom, right, top), true);
  }

  /** A drawing's y goes down. */
  private static Optional<DrawnOutline> outline(List<Double> numbers, boolean closed) {
    if (numbers.size() % 2 != 0 || !numbers.stream().allMatch(n -> Math.abs(n) < LARGEST)) {
      return Optional.empty();
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i += 2) {
      points.add(new Point(numbers.get(i), -numbers.get(i + 1)));
    }
    return Optional.of(new DrawnOutline(points, closed));
  }
}
