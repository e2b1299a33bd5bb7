package skidway.sheet;

import java.util.List;
import java.util.stream.Collectors;

/** Says shortly which pieces must be moved aside before one can be pulled. */
final class RehandleWords {
  private static final int MOST_MARKS = 3;

  private RehandleWords() {}

  /** The marks of a few, or how many of which bundles; an empty text for none. */
  static String of(List<PullLine.Over> over) {
    if (over.size() <= MOST_MARKS) {
      return over.stream().map(PullLine.Over::mark).collect(Collectors.joining(", "));
    }
    String bundles =
        over.stream().map(PullLine.Over::bundleId).distinct().collect(Collectors.joining(", "));
    return over.size() + " pieces of " + bundles;
  }
}
