package skidway.staging;

import java.util.ArrayList;
import java.util.List;

/**
 * The best way to stack a set of bundles.
 *
 * @param legal whether any order is within the rules
 * @param order bundle numbers bottom to top, what comes at an earlier moment first; empty when not
 *     legal
 * @param pickMs person-milliseconds lost at picking too low or too high
 * @param rehandleMs person-milliseconds of moving pieces aside
 * @param setDownMs person-milliseconds of lifting bundles twice
 * @param liftAsideMs person-milliseconds of lifting away and back what lay there from the start
 * @param untouched how many of the lowest lie there from the start and are not lifted
 */
record StackCost(
    boolean legal,
    List<Integer> order,
    long pickMs,
    long rehandleMs,
    long setDownMs,
    long liftAsideMs,
    int untouched) {
  StackCost {
    order = List.copyOf(order);
  }

  static final StackCost EMPTY = new StackCost(true, List.of(), 0, 0, 0, 0, 0);
  static final StackCost ILLEGAL = new StackCost(false, List.of(), 0, 0, 0, 0, 0);

  long totalMs() {
    return pickMs + rehandleMs + setDownMs + liftAsideMs;
  }

  /** The same cost of an order that breaks a rule. */
  StackCost broken() {
    return new StackCost(false, order, pickMs, rehandleMs, setDownMs, liftAsideMs, untouched);
  }

  /** Two piles that are on one spot one after the other. */
  StackCost then(StackCost later) {
    if (!legal || !later.legal) {
      return ILLEGAL;
    }
    List<Integer> both = new ArrayList<>(order);
    both.addAll(later.order);
    return new StackCost(
        true,
        both,
        pickMs + later.pickMs,
        rehandleMs + later.rehandleMs,
        setDownMs + later.setDownMs,
        liftAsideMs + later.liftAsideMs,
        untouched + later.untouched);
  }
}
