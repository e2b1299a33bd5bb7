package skidway.paper;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Which letters of a page no font has, and how to say so. */
final class MissingLetters {
  private static final int MOST_TEXTS = 5;
  private static final int LONGEST = 40;

  private MissingLetters() {}

  static NavigableSet<Integer> in(List<String> texts, FontShelf shelf) {
    BitSet used = new BitSet();
    texts.forEach(text -> text.codePoints().forEach(used::set));
    return used.stream()
        .filter(c -> seen(c) && !shelf.has(c))
        .boxed()
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean seen(int c) {
    return !Character.isWhitespace(c)
        && !Character.isISOControl(c)
        && Character.getType(c) != Character.FORMAT;
  }

  /** A sentence for each text with such letters, the first few of them. */
  static List<String> told(NavigableSet<Integer> missing, List<String> texts) {
    List<String> told = new ArrayList<>();
    int more = 0;
    for (String text : texts.stream().map(String::strip).distinct().toList()) {
      List<String> here =
          text.codePoints()
              .filter(missing::contains)
              .distinct()
              .mapToObj(MissingLetters::name)
              .toList();
      if (!here.isEmpty() && told.size() < MOST_TEXTS) {
        told.add(
            "\"" + shortened(text) + "\": no font on this computer has " + String.join(", ", here));
      } else if (!here.isEmpty()) {
        more++;
      }
    }
    if (more > 0) {
      told.add("... and " + more + " more texts with such letters");
    }
    return told;
  }

  private static String name(int c) {
    return Character.toString(c) + String.format(java.util.Locale.ROOT, " (U+%04X)", c);
  }

  private static String shortened(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "\u2026";
  }
}
