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
   * Sets at the prices of a bound.
   *
   * @param answer of the relaxation, at those prices
   * @param costMs what the plans cost less than that it is for
   * @param columns by spot
   * @param complete whether no set is missing that such a plan can have
   */
  static Pool of(
      Ground ground, Answer answer, long costMs, List<Column> columns, boolean complete) {
    return new Pool(ground, costMs, answer.valueMs, complete, columns, answer.prices, List.of());
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
