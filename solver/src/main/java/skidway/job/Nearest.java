package skidway.job;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Finds the names that somebody may have meant: few letters apart, or sharing a word. */
final class Nearest {
  private static final int SUGGESTED = 3;

  /** Looking further than this would take longer than it helps. */
  private static final int LOOKED_AT = 2000;

  /** Longer texts are no slips of names. */
  private static final int LONGEST_NAME = 60;

  private Nearest() {}

  /** A clause such as {@code , did you mean "W1"?}, or an empty text. */
  static String hint(String name, Collection<String> known) {
    List<String> near = to(name, known);
    return near.isEmpty()
        ? ""
        : near.stream().collect(Collectors.joining("\" or \"", " (did you mean \"", "\"?)"));
  }

  static List<String> to(String name, Collection<String> known) {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      return List.of();
    }
    String wanted = plain(name);
    int most = Math.max(1, wanted.length() / 3);
    record Near(String name, int distance) {}
    return known.stream()
        .limit(LOOKED_AT)
        .filter(k -> k.length() <= LONGEST_NAME)
        .map(k -> new Near(k, distance(wanted, plain(k))))
        .filter(n -> n.distance() <= most)
        .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
        .limit(SUGGESTED)
        .map(Near::name)
        .toList();
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
  }

  /** Letters to change, add or drop; a name that holds the other whole counts as one apart. */
  private static int distance(String a, String b) {
    if (a.length() >= 3 && b.contains(a)) {
      return a.equals(b) ? 0 : 1;
    }
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
