package skidway.bound;

import java.util.ArrayList;
import java.util.List;

/**
 * Looks for the cheapest plan that completes an assembly: the bundle with the fewest sets left is
 * placed in each of them in turn. Excesses add up, so that most ways end early.
 */
final class Completion {
  /** Cheaper plans that may turn out to break a rule before the search is given up. */
  private static final int MOST_FINISHED = 500;

  private final Assembly assembly;
  private final List<List<Column>> ofBundle;
  private final long boundMs;
  private final Judge judge;
  private final int largest;
  private long stepsLeft;
  private long steps;
  private long bestMs;
  private long rejectedMs;
  private int finished;
  private boolean complete;
  private List<Column> best = List.of();

  /**
   * @param ofBundle by bundle the sets that may be added, the least excess first
   */
  Completion(Assembly assembly, List<List<Column>> ofBundle, long boundMs, Judge judge) {
    this.assembly = assembly;
    this.ofBundle = ofBundle;
    this.boundMs = boundMs;
    this.judge = judge;
    this.largest =
        ofBundle.stream().flatMap(List::stream).mapToInt(c -> c.set.length).max().orElse(1);
  }

  /**
   * Looks for plans below some cost; the assembly is as before afterwards.
   *
   * @return whether all were looked at
   */
  boolean run(long costMs, long mostSteps) {
    bestMs = costMs;
    rejectedMs = Long.MAX_VALUE;
    finished = 0;
    stepsLeft = mostSteps;
    complete = true;
    best = List.of();
    extend();
    steps += mostSteps - stepsLeft;
    return complete;
  }

  /** How many sets were looked at, all runs together. */
  long steps() {
    return steps;
  }

  /** What the cheapest sound plan costs, or what was asked to go below. */
  long bestMs() {
    return bestMs;
  }

  /**
   * What the cheapest plan costs that breaks a rule which a bound ignores; or the highest number.
   */
  long rejectedMs() {
    return rejectedMs;
  }

  /** The sets of the cheapest sound plan; none if there was none. */
  List<Column> best() {
    return best;
  }

  private void extend() {
    if (assembly.left() == 0) {
      finish();
      return;
    }
    long atLeastMs = boundMs + assembly.excessMs();
    List<Column> fewest = List.of();
    boolean any = false;
    double more = 0;
    for (int b = 0; b < ofBundle.size(); b++) {
      if (!assembly.isPlaced(b)) {
        Open open = open(b, atLeastMs, any ? fewest.size() : Integer.MAX_VALUE);
        more += open.shareMs;
        if (!any || open.columns.size() < fewest.size()) {
          fewest = open.columns;
          any = true;
        }
        if (fewest.isEmpty() || atLeastMs + Math.floor(more) >= bestMs) {
          return;
        }
      }
    }
    for (Column column : fewest) {
      if (!complete || atLeastMs + column.excessMs >= bestMs) {
        return;
      }
      assembly.add(column);
      extend();
      assembly.remove(column);
    }
  }

  /**
   * The sets that a bundle may still be in, no more of them than matter, and the least that it adds
   * to the excess of any plan.
   */
  private record Open(List<Column> columns, double shareMs) {}

  private Open open(int b, long atLeastMs, int most) {
    List<Column> open = new ArrayList<>();
    double shareMs = Double.POSITIVE_INFINITY;
    for (Column column : ofBundle.get(b)) {
      boolean enough = open.size() >= most && column.excessMs >= shareMs * largest;
      if (enough || atLeastMs + column.excessMs >= bestMs) {
        break;
      }
      stepsLeft--;
      if (assembly.takes(column)) {
        open.add(column);
        shareMs = Math.min(shareMs, column.shareMs());
      }
    }
    complete &= stepsLeft > 0;
    return new Open(open, shareMs);
  }

  private void finish() {
    long costMs = assembly.costMs();
    if (costMs >= bestMs) {
      return;
    }
    complete &= ++finished <= MOST_FINISHED;
    switch (judge.verdict(assembly.spotOf())) {
      case SOUND -> {
        bestMs = costMs;
        best = List.copyOf(assembly.columns());
      }
      case LEGAL -> rejectedMs = Math.min(rejectedMs, costMs);
      case ILLEGAL -> {}
    }
  }
}
