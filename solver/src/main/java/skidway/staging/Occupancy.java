package skidway.staging;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import skidway.rules.Rule;

/**
 * A plan in the making: who lies on which spot, what it costs, and how many rules it breaks. A
 * stack is priced anew when somebody asks and its bundles have changed; everything else is kept up
 * to date by adding and subtracting.
 */
final class Occupancy {
  static final int NOWHERE = -1;

  final Board board;
  private final StackEvaluator evaluator;
  private final int[] spotOf;
  private final int[][] members;
  private final int[] count;
  private final StackCost[] stacks;
  private final LastStacks last;

  /** Spots whose stacks have changed since they were priced; the first {@link #changed} count. */
  private final int[] changedSpots;

  private final boolean[] isChanged;
  private int changed;

  /** How many bundles are there, by moment and spot. */
  private final int[][] countAt;

  /** How many used spots exclude a spot, by moment and spot. */
  private final int[][] excludedBy;

  /** By moment. */
  private final SharedLoads[] shared;

  /** Sets of spots that must not all be used, because together they shut a walking path. */
  private final List<int[]> shutTogether;

  private long costMs;
  private int unplaced;
  private int illegalStacks;
  private int conflicts;

  /** Rules broken by what lies there from the start. */
  private Forgiven forgiven = Forgiven.NOTHING;

  Occupancy(Board board, StackEvaluator evaluator, List<int[]> shutTogether) {
    this.board = board;
    this.evaluator = evaluator;
    this.shutTogether = List.copyOf(shutTogether);
    spotOf = new int[board.bundleCount()];
    members = new int[board.spotCount()][];
    count = new int[board.spotCount()];
    stacks = new StackCost[board.spotCount()];
    last = new LastStacks(board.spotCount());
    changedSpots = new int[board.spotCount()];
    isChanged = new boolean[board.spotCount()];
    countAt = new int[board.moments][board.spotCount()];
    excludedBy = new int[board.moments][board.spotCount()];
    shared = new SharedLoads[board.moments];
    Arrays.setAll(shared, moment -> new SharedLoads(board));
    clear();
  }

  void clear() {
    Arrays.fill(spotOf, NOWHERE);
    Arrays.fill(count, 0);
    Arrays.fill(stacks, StackCost.EMPTY);
    Arrays.fill(isChanged, false);
    changed = 0;
    for (int moment = 0; moment < board.moments; moment++) {
      Arrays.fill(countAt[moment], 0);
      Arrays.fill(excludedBy[moment], 0);
      shared[moment].clear();
    }
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
    for (int moment = board.comes[bundle]; moment < board.moments; moment++) {
      if (board.isThere(bundle, moment) && countAt[moment][spot]++ == 0) {
        open(spot, moment);
      }
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
    change(spot);
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
    for (int moment = board.comes[bundle]; moment < board.moments; moment++) {
      if (board.isThere(bundle, moment) && --countAt[moment][spot] == 0) {
        close(spot, moment);
      }
    }
    change(spot);
  }

  private void change(int spot) {
    if (!isChanged[spot]) {
      isChanged[spot] = true;
      changedSpots[changed++] = spot;
    }
  }

  /** Prices what has changed. */
  private void settle() {
    while (changed > 0) {
      int spot = changedSpots[--changed];
      isChanged[spot] = false;
      reprice(spot);
    }
  }

  private int[] roomFor(int spot, int bundles) {
    int[] row = members[spot];
    if (row == null || row.length < bundles) {
      row = row == null ? new int[4] : Arrays.copyOf(row, 2 * row.length);
      members[spot] = row;
    }
    return row;
  }

  private void open(int spot, int moment) {
    conflicts += excludedBy[moment][spot];
    for (int other : board.excludes[spot]) {
      excludedBy[moment][other]++;
    }
  }

  private void close(int spot, int moment) {
    for (int other : board.excludes[spot]) {
      excludedBy[moment][other]--;
    }
    conflicts -= excludedBy[moment][spot];
  }

  private void reprice(int spot) {
    StackCost before = stacks[spot];
    StackCost after = known(spot);
    stacks[spot] = after;
    costMs += after.totalMs() - before.totalMs();
    illegalStacks += (after.legal() ? 0 : 1) - (before.legal() ? 0 : 1);
    for (int moment = 0; moment < board.moments; moment++) {
      shared[moment].set(spot, share(spot, after, moment), massKg(spot, moment));
    }
  }

  /** A stack that is illegal by itself need not be asked what it shares. */
  private SharedLimits.Share share(int spot, StackCost stack, int moment) {
    if (countAt[moment][spot] == 0 || !stack.legal()) {
      return SharedLimits.Share.NONE;
    }
    return board.share(spot, lowest(spot, stack, moment), stack.untouched() > 0);
  }

  private int lowest(int spot, StackCost stack, int moment) {
    if (board.rack[spot]) {
      return members[spot][0];
    }
    for (int bundle : stack.order()) {
      if (board.isThere(bundle, moment)) {
        return bundle;
      }
    }
    throw new IllegalStateException("Nothing is there.");
  }

  /** What lies on a spot when most does, kg at most. */
  double massKg(int spot) {
    double most = 0;
    for (int moment = 0; moment < board.moments; moment++) {
      most = Math.max(most, massKg(spot, moment));
    }
    return most;
  }

  /** What a bundle carries when it carries most while nothing lies beneath it, kg; or 0. */
  double massOverLowestKg(int spot, int bundle) {
    settle();
    double most = 0;
    for (int moment = 0; moment < board.moments; moment++) {
      if (board.isThere(bundle, moment) && lowest(spot, stacks[spot], moment) == bundle) {
        most = Math.max(most, massKg(spot, moment));
      }
    }
    return most;
  }

  /** What lies on a spot when a moment begins, kg at most. */
  double massKg(int spot, int moment) {
    double sum = 0;
    for (int i = 0; i < count[spot]; i++) {
      int bundle = members[spot][i];
      sum += board.isThere(bundle, moment) ? board.massKg[bundle] : 0;
    }
    return sum;
  }

  private StackCost known(int spot) {
    int k = count[spot];
    if (k == 0) {
      return StackCost.EMPTY;
    }
    StackCost cost = last.find(spot, members[spot], k);
    if (cost == null) {
      cost = price(spot);
      last.put(spot, members[spot], k, cost);
    }
    return cost;
  }

  private StackCost price(int spot) {
    int k = count[spot];
    for (int i = 0; i < k; i++) {
      if (board.placeMs[members[spot][i]][spot] == Board.REFUSED) {
        return StackCost.ILLEGAL;
      }
    }
    if (!board.rack[spot]) {
      return evaluator.best(members[spot], k, spot);
    }
    return board.rackHolds(members[spot], k, spot) || staysInRack(spot, k)
        ? StackCost.EMPTY
        : StackCost.ILLEGAL;
  }

  /** What stands in a rack from the start stays there, however full the crew made it. */
  private boolean staysInRack(int spot, int k) {
    for (int i = 0; i < k; i++) {
      if (board.home[members[spot][i]] != spot) {
        return false;
      }
    }
    return true;
  }

  /** Whether nothing breaks a rule but what did from the start. */
  boolean legal() {
    settle();
    return illegalStacks == 0 && (brokenRules() == 0 || forgiven.covers(this));
  }

  /**
   * Whether a bundle on a spot can make another spot illegal that it does not exclude: by a limit
   * that stacks share, a path that they shut together, or a rule that was forgiven.
   */
  boolean changesFarOff(int spot) {
    return board.shared.count() > 0
        || isTolerant()
        || shutTogether.stream().anyMatch(set -> Arrays.stream(set).anyMatch(s -> s == spot));
  }

  /** Whether something that lies there from the start breaks a rule, which is forgiven. */
  boolean isTolerant() {
    return !forgiven.isNothing();
  }

  int brokenRules() {
    settle();
    int broken = illegalStacks + conflicts + shutPaths();
    for (SharedLoads loads : shared) {
      broken += loads.broken();
    }
    return broken;
  }

  /** How many pairs of used spots exclude each other, over all moments. */
  int conflicts() {
    return conflicts;
  }

  /** How many paths are shut, over all moments. */
  int shutPaths() {
    int shut = 0;
    for (int moment = 0; moment < board.moments; moment++) {
      for (int[] together : shutTogether) {
        shut += allUsed(together, moment) ? 1 : 0;
      }
    }
    return shut;
  }

  /** The spots that shut a path when a moment begins. */
  List<int[]> shut(int moment) {
    return shutTogether.stream().filter(together -> allUsed(together, moment)).toList();
  }

  /** By limit that stacks share and break when a moment begins, how much of it is taken. */
  Map<Integer, Double> overtaken(int moment) {
    return shared[moment].overtaken();
  }

  private boolean allUsed(int[] spots, int moment) {
    for (int spot : spots) {
      if (countAt[moment][spot] == 0) {
        return false;
      }
    }
    return true;
  }

  /** Cost of all placed bundles, person-milliseconds. */
  long costMs() {
    settle();
    return costMs;
  }

  /** Whether more bundles have a spot, or as many at less cost. */
  boolean isBetterThan(Occupancy other) {
    return unplaced != other.unplaced ? unplaced < other.unplaced : costMs() < other.costMs();
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

  /** How many bundles are on a spot when a moment begins. */
  int count(int spot, int moment) {
    return countAt[moment][spot];
  }

  int member(int spot, int i) {
    return members[spot][i];
  }

  StackCost stack(int spot) {
    settle();
    return stacks[spot];
  }

  /** The rule that the bundles on a stack spot break together. */
  Rule refusal(int spot) {
    return evaluator.refusal(members[spot], count[spot], spot);
  }

  /** Whether stacks together exceed a limit they share. */
  boolean overloaded() {
    settle();
    return Arrays.stream(shared).anyMatch(loads -> loads.broken() > 0);
  }

  /**
   * Whether shared limits are kept at a moment while some bundles wait, each alone on its place.
   */
  boolean takesWaiting(List<Integer> bundles, List<Integer> places, int moment) {
    settle();
    return shared[moment].takes(
        IntStream.range(0, bundles.size())
            .mapToObj(
                i ->
                    new SharedLoads.Extra(
                        board.share(places.get(i), bundles.get(i)), board.massKg[bundles.get(i)]))
            .toList());
  }

  /** The rule of the first shared limit that is exceeded. */
  Rule overloadedRule() {
    settle();
    return Arrays.stream(shared)
        .filter(loads -> loads.broken() > 0)
        .findFirst()
        .orElseThrow()
        .firstBroken();
  }

  /** How many used spots exclude this one, over all moments. */
  int excluders(int spot) {
    int sum = 0;
    for (int[] at : excludedBy) {
      sum += at[spot];
    }
    return sum;
  }

  /** Whether no used spot ever excludes this one. */
  boolean free(int spot) {
    return excluders(spot) == 0;
  }

  /** Whether a spot that another excludes would have to be taken for a bundle: seen at a glance. */
  boolean blocked(int bundle, int spot) {
    for (int moment = board.comes[bundle]; moment < board.moments; moment++) {
      if (countAt[moment][spot] == 0
          && excludedBy[moment][spot] > 0
          && board.isThere(bundle, moment)) {
        return true;
      }
    }
    return false;
  }

  /** Whether no stack on a spot can have both of two bundles: seen at a glance. */
  boolean neverTogether(int bundle, int other, int spot) {
    return !board.rack[spot] && evaluator.neverTogether(bundle, other);
  }

  /**
   * Puts what lies there from the start where it lies; what spots break together there is forgiven.
   * Of a stack that breaks rules by itself as much is left out as must go elsewhere.
   */
  void layStart() {
    for (int b = 0; b < board.bundleCount(); b++) {
      put(b, board.home[b]);
    }
    for (int spot = 0; spot < count.length; spot++) {
      while (!stack(spot).legal() && highestLoose(spot) != NOWHERE) {
        take(highestLoose(spot));
      }
    }
    settle();
    forgiven = Forgiven.of(this);
  }

  /** The highest bundle of a spot that may be lifted, as it lay from the start. */
  private int highestLoose(int spot) {
    int highest = NOWHERE;
    for (int i = 0; i < count[spot]; i++) {
      int bundle = members[spot][i];
      boolean higher = highest == NOWHERE || board.homeTier[bundle] > board.homeTier[highest];
      highest = !board.stays[bundle] && higher ? bundle : highest;
    }
    return highest;
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
