package skidway.shakeout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** One pile of a trial: its pieces from the bottom up, the one laid last on the wall lowest. */
final class TriedPile {
  private static final long NOT_KNOWN = -1;

  private final PileDraft draft;
  private final Pricing pricing;
  private int[] pulls;
  private int size;

  /** What it costs as it is, as long as nothing comes or goes; or {@link #NOT_KNOWN}. */
  private long knownMs = NOT_KNOWN;

  TriedPile(PileDraft draft, Pricing pricing) {
    this.draft = draft;
    this.pricing = pricing;
    size = draft.pulls().size();
    pulls = Arrays.copyOf(draft.pulls().stream().mapToInt(i -> i).toArray(), size + 8);
  }

  int place() {
    return draft.place();
  }

  boolean isEmpty() {
    return size == 0;
  }

  IntStream pulls() {
    return Arrays.stream(pulls, 0, size);
  }

  List<Integer> list() {
    return pulls().boxed().toList();
  }

  /** The pile as it is now. */
  PileDraft draft() {
    return new PileDraft(draft.place(), list(), draft.trips());
  }

  void add(int pull) {
    if (size == pulls.length) {
      pulls = Arrays.copyOf(pulls, 2 * size);
    }
    int at = size;
    while (at > 0 && pulls[at - 1] < pull) {
      pulls[at] = pulls[at - 1];
      at--;
    }
    pulls[at] = pull;
    size++;
    knownMs = NOT_KNOWN;
  }

  void remove(int pull) {
    int at = 0;
    while (pulls[at] != pull) {
      at++;
    }
    size--;
    System.arraycopy(pulls, at + 1, pulls, at, size - at);
    knownMs = NOT_KNOWN;
  }

  /** Setting it up, and picking its pieces from it. */
  long costMs() {
    if (knownMs == NOT_KNOWN) {
      knownMs = size == 0 ? 0 : pricing.pileMs(pulls, size);
    }
    return knownMs;
  }
}
