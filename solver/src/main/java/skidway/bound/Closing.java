package skidway.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Looks at all plans that may be cheaper than a known one. At the prices of a bound every set of
 * bundles on a spot says by how much a plan that has it is above the bound at least, and these
 * excesses add up; so of all sets only those count that leave a plan below the known one, and of
 * their combinations only those that do so together.
 */
final class Closing {
  static final int MOST_BUNDLES = 62;

  /** With more sets than this nobody gets to the end of their combinations. */
  private static final int MOST_COLUMNS = 60_000;

  /** Cheaper plans that may turn out to break a rule before closing is given up. */
  private static final int MOST_FINISHED = 500;

  private final Ground ground;
  private final Judge judge;
  private final long mostSteps;
  private final long boundMs;
  private final boolean[][] excludes;
  private final List<List<Column>> ofBundle = new ArrayList<>();
  private final int[] spotOf;
  private long steps;
  private long bestMs;
  private long rejectedMs = Long.MAX_VALUE;
  private int finished;
  private int columns;
  private boolean complete;

  Closing(
      Ground ground,
      Relaxation relaxation,
      Prices prices,
      long costMs,
      long mostSteps,
      Judge judge) {
    this.ground = ground;
    this.judge = judge;
    this.mostSteps = mostSteps;
    this.bestMs = costMs;
    this.boundMs = relaxation.valueMs(prices, new double[prices.ms.length]);
    this.excludes = new boolean[ground.spots()][ground.spots()];
    this.spotOf = new int[ground.bundles()];
    IntStream.range(0, ground.bundles()).forEach(b -> ofBundle.add(new ArrayList<>()));
    complete = gather(relaxation, prices);
    steps += relaxation.steps();
    if (complete) {
      ofBundle.forEach(
          list ->
              list.sort(Comparator.comparingLong(Column::excessMs).thenComparingInt(Column::spot)));
      for (int s = 0; s < ground.spots(); s++) {
        for (int other : ground.excludes(s)) {
          excludes[s][other] = true;
        }
      }
      extend(new ArrayList<>(), 0, boundMs);
    }
  }

  long steps() {
    return steps;
  }

  /** What the cheapest plan costs, if all were looked at; else the bound as it was. */
  long provenMs() {
    return complete ? Math.min(bestMs, rejectedMs) : boundMs;
  }

  private boolean gather(Relaxation relaxation, Prices prices) {
    boolean all = true;
    for (int s = 0; s < ground.spots() && all; s++) {
      int spot = s;
      all =
          relaxation.tellBelow(
              s, prices, bestMs - boundMs, (set, excessMs) -> take(spot, set, excessMs));
      all &= columns <= MOST_COLUMNS && relaxation.steps() <= mostSteps;
    }
    return all;
  }

  private void take(int spot, int[] set, long excessMs) {
    if (columns++ > MOST_COLUMNS) {
      return;
    }
    long bundles = 0;
    long moments = 0;
    long costMs = ground.stackMs(set, set.length, spot);
    for (int b : set) {
      bundles |= 1L << b;
      moments |= ground.there(b);
      costMs += ground.placeMs(b, spot);
    }
    Column column = new Column(spot, bundles, moments, costMs, excessMs);
    for (int b : set) {
      ofBundle.get(b).add(column);
    }
  }

  /**
   * Places the bundle that has the fewest sets left in each of them in turn.
   *
   * @param atLeastMs what every plan with the chosen sets costs at least
   */
  private void extend(List<Column> chosen, long placed, long atLeastMs) {
    if (placed == (1L << spotOf.length) - 1) {
      finish(chosen);
      return;
    }
    int bundle = -1;
    List<Column> fewest = List.of();
    for (int b = 0; b < spotOf.length; b++) {
      if ((placed >> b & 1) == 0) {
        int most = bundle < 0 ? Integer.MAX_VALUE : fewest.size();
        List<Column> open = open(b, chosen, placed, atLeastMs, most);
        if (bundle < 0 || open.size() < fewest.size()) {
          bundle = b;
          fewest = open;
        }
      }
    }
    for (Column column : fewest) {
      if (!complete || atLeastMs + column.excessMs() >= bestMs) {
        return;
      }
      chosen.add(column);
      extend(chosen, placed | column.bundles(), atLeastMs + column.excessMs());
      chosen.remove(chosen.size() - 1);
    }
  }

  /** The sets that a bundle may still be in; no more of them than told. */
  private List<Column> open(int b, List<Column> chosen, long placed, long atLeastMs, int most) {
    List<Column> open = new ArrayList<>();
    for (Column column : ofBundle.get(b)) {
      if (atLeastMs + column.excessMs() >= bestMs || open.size() >= most) {
        break;
      }
      steps++;
      if ((column.bundles() & placed) == 0 && chosen.stream().noneMatch(c -> clash(c, column))) {
        open.add(column);
      }
    }
    complete &= steps <= mostSteps;
    return open;
  }

  private boolean clash(Column a, Column b) {
    return a.spot() == b.spot()
        || (excludes[a.spot()][b.spot()] && (a.moments() & b.moments()) != 0);
  }

  private void finish(List<Column> chosen) {
    long costMs = chosen.stream().mapToLong(Column::costMs).sum();
    if (costMs >= bestMs) {
      return;
    }
    Arrays.setAll(
        spotOf,
        b ->
            chosen.stream()
                .filter(c -> (c.bundles() >> b & 1) == 1)
                .findFirst()
                .orElseThrow()
                .spot());
    complete &= ++finished <= MOST_FINISHED;
    switch (judge.verdict(spotOf.clone())) {
      case SOUND -> bestMs = costMs;
      case LEGAL -> rejectedMs = Math.min(rejectedMs, costMs);
      case ILLEGAL -> {}
    }
  }
}
