package skidway.staging;

import java.util.List;

/**
 * The best way to stack a set of bundles.
 *
 * @param legal whether any order is within the rules
 * @param order bundle numbers bottom to top; empty when not legal
 * @param pickMs person-milliseconds lost at picking too low or too high
 * @param rehandleMs person-milliseconds of moving pieces aside
 * @param setDownMs person-milliseconds of lifting bundles twice
 */
record StackCost(boolean legal, List<Integer> order, long pickMs, long rehandleMs, long setDownMs) {
  StackCost {
    order = List.copyOf(order);
  }

  static final StackCost EMPTY = new StackCost(true, List.of(), 0, 0, 0);
  static final StackCost ILLEGAL = new StackCost(false, List.of(), 0, 0, 0);

  long totalMs() {
    return pickMs + rehandleMs + setDownMs;
  }
}
