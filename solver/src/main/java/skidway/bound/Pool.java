package skidway.bound;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The sets of bundles on spots that a plan cheaper than some cost can have. At the prices of a
 * bound every set says by how much a plan that has it is above the bound at least, so most sets are
 * out of question.
 */
final class Pool {
  /** With more sets than this nobody gets to the end of their combinations. */
  private static final int MOST_COLUMNS = 60_000;

  /** How often the cost is brought down by half its way to the bound until the sets are few. */
  private static final int MOST_TRIES = 8;

  /** What the plans cost less than that it is for. */
  final long costMs;

  /** What every plan costs at least, by the bound that told the excesses. */
  final long boundMs;

  /** Whether no set is missing. */
  final boolean complete;

  /** At which the sets told their excesses. */
  final Prices prices;

  /** Sets of which a plan has one at most and which the prices charge, by places in the columns. */
  final List<BitSet> rivals;

  /** By spot. */
  final List<Column> columns;

  /** By bundle those that hold it, the least excess first. */
  final List<List<Column>> ofBundle;

  private Pool(
      Ground ground,
      long costMs,
      long boundMs,
      boolean complete,
      List<Column> columns,
      Prices prices,
      List<BitSet> rivals) {
    this.columns = columns;
    this.costMs = costMs;
    this.boundMs = boundMs;
    this.complete = complete;
    this.prices = prices;
    this.rivals = rivals;
    this.ofBundle = byBundle(ground, columns);
  }

  /** The sets that are left of it, priced anew. */
  Pool priced(Ground ground, long atMs, List<Column> left, Prices anew, List<BitSet> charged) {
    return new Pool(ground, costMs, atMs, complete, left, anew, charged);
  }

  /**
   * Gathers what a plan below some cost can have; if that are too many sets, the best of them.
   *
   * @param mostSteps sets to look at; none are gathered if they do not last
   */
  static Pool of(Ground ground, Relaxation relaxation, Prices prices, long costMs, long mostSteps) {
    long boundMs = relaxation.valueMs(prices, new double[prices.ms.length]);
    long below = Math.max(0, costMs - boundMs);
    for (int i = 0; i < MOST_TRIES && relaxation.steps() < mostSteps; i++, below /= 2) {
      List<Column> columns = new ArrayList<>();
      if (gather(ground, relaxation, prices, below, mostSteps, columns)) {
        return new Pool(ground, costMs, boundMs, i == 0, columns, prices, List.of());
      }
    }
    return new Pool(ground, costMs, boundMs, false, List.of(), prices, List.of());
  }

  private static boolean gather(
      Ground ground,
      Relaxation relaxation,
      Prices prices,
      long belowMs,
      long mostSteps,
      List<Column> columns) {
    boolean all = true;
    for (int s = 0; s < ground.spots() && all; s++) {
      int spot = s;
      all =
          relaxation.tellBelow(
              s,
              prices,
              belowMs,
              (set, valueMs) -> {
                if (columns.size() <= MOST_COLUMNS) {
                  columns.add(new Column(ground, spot, set, valueMs, relaxation.gainMs(spot)));
                }
              });
      all &= columns.size() <= MOST_COLUMNS && relaxation.steps() < mostSteps;
    }
    return all;
  }

  /** By bundle those that hold it, the least excess first. */
  static List<List<Column>> byBundle(Ground ground, List<Column> columns) {
    List<List<Column>> ofBundle = new ArrayList<>();
    IntStream.range(0, ground.bundles()).forEach(b -> ofBundle.add(new ArrayList<>()));
    columns.stream()
        .sorted(Comparator.comparingLong((Column c) -> c.excessMs).thenComparingInt(c -> c.spot))
        .forEach(
            column -> {
              for (int b : column.set) {
                ofBundle.get(b).add(column);
              }
            });
    return ofBundle;
  }
}
