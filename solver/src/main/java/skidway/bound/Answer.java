package skidway.bound;

import java.util.Arrays;

/** What the relaxation answers at some prices, all spots asked. */
final class Answer {
  final Prices prices;

  /** What each spot gains: never positive. */
  final long[] gainMs;

  /** The lower bound. */
  final long valueMs;

  /**
   * @param mayLeave how many bundles may stay without a spot
   */
  Answer(Prices prices, long[] gainMs, int mayLeave) {
    this.prices = prices;
    this.gainMs = gainMs.clone();
    this.valueMs = prices.beforeSpotsMs(mayLeave) + Arrays.stream(gainMs).sum();
  }
}
