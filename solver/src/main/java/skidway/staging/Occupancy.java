package skidway.staging;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import skidway.rules.Rule;

/**
 * A plan in the making: who lies on which spot, what it costs, and how many rules it breaks.
 * Putting a bundle on a spot or taking it off prices one stack anew; everything else is kept up to
 * date by adding and subtracting.
 */
final class Occupancy {
  static final int NOWHERE = -1;

  final Board board;
  private final StackEvaluator evaluator;
  private final int[] spotOf;
  private final int[][] members;
  private final int[] count;
  private final StackCost[] stacks;
  private final int[] excludedBy;
  private final SharedLoads shared;

  /** Sets of spots that must not all be used, because together they shut a walking path. */
  private final List<int[]> shutTogether;

  private long costMs;
  private int unplaced;
  private int illegalStacks;
  private int conflicts;

  Occupancy(Board board, StackEvaluator evaluator, List<int[]> shutTogether) {
    this.board = board;
    this.evaluator = evaluator;
    this.shutTogether = List.copyOf(shutTogether);
    spotOf = new int[board.bundleCount()];
    members = new int[board.spotCount()][];
    count = new int[board.spotCount()];
    stacks = new StackCost[board.spotCount()];
    excludedBy = new int[board.spotCount()];
    shared = new SharedLoads(board);
    clear();
  }

  void clear() {
    Arrays.fill(spotOf, NOWHERE);
    Arrays.fill(count, 0);
    Arrays.fill(stacks, StackCost.EMPTY);
    Arrays.fill(excludedBy, 0);
    shared.clear();
    costMs = 0;
    unplaced = spotOf.length;
    illegalStacks = 0;
    conflicts = 0;
  }

  /** Puts a bundle that lies nowhere onto a spot. */
  void put(int bundle, int spot) {
    if (spot == NOWHERE) {
      return;
    }
    int k = count[spot]++;
    if (k == 0) {
      open(spot);
    }
    int[] row = roomFor(spot, k + 1);
    int at = k;
    while (at > 0 && row[at - 1] > bundle) {
      row[at] = row[at - 1];
      at--;
    }
    row[at] = bundle;
    spotOf[bundle] = spot;
    unplaced--;
    costMs += board.placeMs[bundle][spot];
    reprice(spot);
  }

  /** Takes a bundle off its spot, if it has one. */
  void take(int bundle) {
    int spot = spotOf[bundle];
    if (spot == NOWHERE) {
      return;
    }
    int[] row = members[spot];
    int k = --count[spot];
    int at = 0;
    while (row[at] != bundle) {
      at++;
    }
    System.arraycopy(row, at + 1, row, at, k - at);
    spotOf[bundle] = NOWHERE;
    unplaced++;
    costMs -= board.placeMs[bundle][spot];
    if (k == 0) {
      close(spot);
    }
    reprice(spot);
  }

  private int[] roomFor(int spot, int bundles) {
    int[] row = members[spot];
    if (row == null || row.length < bundles) {
      row = row == null ? new int[4] : Arrays.copyOf(row, 2 * row.length);
      members[spot] = row;
    }
    return row;
  }

  private void open(int spot) {
    conflicts += excludedBy[spot];
    for (int other : board.excludes[spot]) {
      excludedBy[other]++;
    }
  }

  private void close(int spot) {
    for (int other : board.excludes[spot]) {
      excludedBy[other]--;
    }
    conflicts -= excludedBy[spot];
  }

  private void reprice(int spot) {
    StackCost before = stacks[spot];
    StackCost after = price(spot);
    stacks[spot] = after;
    costMs += after.totalMs() - before.totalMs();
    illegalStacks += (after.legal() ? 0 : 1) - (before.legal() ? 0 : 1);
    shared.set(spot, share(spot, after), massKg(spot));
  }

  /** A stack that is illegal by itself need not be asked what it shares. */
  private SharedLimits.Share share(int spot, StackCost stack) {
    if (count[spot] == 0 || !stack.legal()) {
      return SharedLimits.Share.NONE;
    }
    return board.share(spot, board.rack[spot] ? members[spot][0] : stack.order().get(0));
  }

  /** What lies on a spot, kg at most. */
  double massKg(int spot) {
    double sum = 0;
    for (int i = 0; i < count[spot]; i++) {
      sum += board.massKg[members[spot][i]];
    }
    return sum;
  }

  private StackCost price(int spot) {
    int k = count[spot];
    for (int i = 0; i < k; i++) {
      if (board.placeMs[members[spot][i]][spot] == Board.REFUSED) {
        return StackCost.ILLEGAL;
      }
    }
    if (!board.rack[spot] || k == 0) {
      return k == 0 ? StackCost.EMPTY : evaluator.best(members[spot], k, spot);
    }
    return rackHolds(spot, k) ? StackCost.EMPTY : StackCost.ILLEGAL;
  }

  private boolean rackHolds(int spot, int k) {
    double floor = 0;
    double mass = massKg(spot);
    for (int i = 0; i < k; i++) {
      floor += board.onEndM2[members[spot][i]];
    }
    return floor <= board.rackFloorM2[spot] + 1e-9
        && mass <= board.massLimitKg[spot] + 1e-9
        && mass <= board.rackMassKg[spot] + 1e-9;
  }

  /** Whether nothing on the board breaks a rule. */
  boolean legal() {
    return illegalStacks == 0 && conflicts == 0 && shared.broken() == 0 && shutPaths() == 0;
  }

  int brokenRules() {
    return illegalStacks + conflicts + shared.broken() + shutPaths();
  }

  private int shutPaths() {
    int shut = 0;
    for (int[] together : shutTogether) {
      boolean all = true;
      for (int spot : together) {
        all &= count[spot] > 0;
      }
      shut += all ? 1 : 0;
    }
    return shut;
  }

  /** Cost of all placed bundles, person-milliseconds. */
  long costMs() {
    return costMs;
  }

  int unplaced() {
    return unplaced;
  }

  int spotOf(int bundle) {
    return spotOf[bundle];
  }

  int count(int spot) {
    return count[spot];
  }

  int member(int spot, int i) {
    return members[spot][i];
  }

  StackCost stack(int spot) {
    return stacks[spot];
  }

  /** The rule that the bundles on a stack spot break together. */
  Rule refusal(int spot) {
    return evaluator.refusal(members[spot], count[spot], spot);
  }

  /** Whether stacks together exceed a limit they share. */
  boolean overloaded() {
    return shared.broken() > 0;
  }

  /** Whether shared limits are kept while some bundles wait, each alone on its place. */
  boolean takesWaiting(List<Integer> bundles, List<Integer> places) {
    return shared.takes(
        IntStream.range(0, bundles.size())
            .mapToObj(
                i ->
                    new SharedLoads.Extra(
                        board.share(places.get(i), bundles.get(i)), board.massKg[bundles.get(i)]))
            .toList());
  }

  /** The rule of the first shared limit that is exceeded. */
  Rule overloadedRule() {
    return shared.firstBroken();
  }

  /** How many used spots exclude this one. */
  int excluders(int spot) {
    return excludedBy[spot];
  }

  /** Whether no used spot excludes this one. */
  boolean free(int spot) {
    return excludedBy[spot] == 0;
  }

  /** Where every bundle lies now. */
  int[] snapshot() {
    return spotOf.clone();
  }

  void restore(int[] snapshot) {
    clear();
    for (int b = 0; b < snapshot.length; b++) {
      put(b, snapshot[b]);
    }
  }
}
