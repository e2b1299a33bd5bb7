package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes many ids shortly: "B01 to B08, B11". Only ids that count on become a range. */
final class IdRanges {
  /** Shorter runs are as quick to read one by one. */
  private static final int SHORTEST = 3;

  private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]{1,9})");

  private record Id(String text, String prefix, int number, int digits) {
    static Id of(String text) {
      Matcher m = NUMBERED.matcher(text);
      return m.matches()
          ? new Id(text, m.group(1), Integer.parseInt(m.group(2)), m.group(2).length())
          : new Id(text, text, -1, 0);
    }

    /** Whether somebody who counts on from this id writes the next one so. */
    boolean countsOnTo(Id next) {
      boolean sameWidth = digits == next.digits;
      boolean oneMoreDigit = Integer.toString(next.number).length() == next.digits;
      return number >= 0
          && prefix.equals(next.prefix)
          && next.number == number + 1
          && (sameWidth || (oneMoreDigit && Integer.toString(number).length() == digits));
    }
  }

  private IdRanges() {}

  static String words(List<String> ids) {
    List<Id> sorted =
        ids.stream()
            .map(Id::of)
            .sorted(
                Comparator.comparing(Id::prefix).thenComparing(Id::number).thenComparing(Id::text))
            .toList();
    List<String> parts = new ArrayList<>();
    int from = 0;
    while (from < sorted.size()) {
      int to = from;
      while (to + 1 < sorted.size() && sorted.get(to).countsOnTo(sorted.get(to + 1))) {
        to++;
      }
      if (to - from + 1 < SHORTEST) {
        parts.add(sorted.get(from).text());
        from++;
      } else {
        parts.add(sorted.get(from).text() + " to " + sorted.get(to).text());
        from = to + 1;
      }
    }
    return String.join(", ", parts);
  }
}
