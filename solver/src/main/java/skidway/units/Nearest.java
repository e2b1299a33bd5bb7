package skidway.units;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds the names that somebody may have meant: few letters apart, or sharing a word. */
public final class Nearest {
  private static final int SUGGESTED = 3;

  /** Looking further than this would take longer than it helps. */
  private static final int LOOKED_AT = 2000;

  /** Longer texts are no slips of names. */
  private static final int LONGEST_NAME = 60;

  private static final Pattern JOINTS = Pattern.compile("[\\s_-]+");

  private Nearest() {}

  /** A clause such as {@code , did you mean "W1"?}, or an empty text. */
  public static String hint(String name, Collection<String> known) {
    List<String> near = to(name, known);
    return near.isEmpty()
        ? ""
        : near.stream().collect(Collectors.joining("\" or \"", " (did you mean \"", "\"?)"));
  }

  /** The nearest names, nearest first; none when all are far. */
  public static List<String> to(String name, Collection<String> known) {
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
    return JOINTS.matcher(name.strip().toLowerCase(Locale.ROOT)).replaceAll("");
  }

  /**
   * Letters to change, add, drop or exchange with the next one; a name that holds the other whole
   * counts as one apart.
   */
  private static int distance(String a, String b) {
    if (a.length() >= 3 && b.contains(a)) {
      return a.equals(b) ? 0 : 1;
    }
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, i, j, d);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(String a, String b, int i, int j, int[][] d) {
    boolean same = a.charAt(i - 1) == b.charAt(j - 1);
    int least = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean exchanged =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return exchanged ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
