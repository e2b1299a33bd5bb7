package skidway.bound;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Finds rivals, sets of bundles on spots of which any two clash, that a relaxation's answers take
 * more than once in the mean. A plan has one of them at most (clique inequalities: Padberg,
 * Mathematical Programming 5, 1973, from memory).
 */
final class RivalSearch {
  /** How much more than once rivals must be taken to be worth a charge. */
  private static final double LEAST = 0.03;

  /** Sets that are taken less often are noise. */
  private static final double FAINT = 0.005;

  private static final int MOST_SEEDS = 400;

  private record Found(List<Integer> members, double shares) {}

  private final List<Column> columns;
  private final Clashes clashes;

  /** How much of each set was taken in the mean. */
  private final double[] shares;

  /** Numbers of the sets that matter, those that were taken more often first. */
  private final List<Integer> taken;

  /** All sets, those that cost least first. */
  private final List<Integer> cheap;

  /**
   * @param columns the sets to look at
   * @param shares how much of each was taken in the mean
   * @param valueMs what each costs at the relaxation's prices
   */
  RivalSearch(List<Column> columns, Clashes clashes, double[] shares, long[] valueMs) {
    this.columns = columns;
    this.clashes = clashes;
    this.shares = shares.clone();
    this.taken =
        IntStream.range(0, columns.size())
            .filter(c -> shares[c] > FAINT)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer c) -> -shares[c]).thenComparing(c -> c))
            .toList();
    this.cheap =
        IntStream.range(0, columns.size())
            .boxed()
            .sorted(Comparator.comparingLong((Integer c) -> valueMs[c]).thenComparing(c -> c))
            .toList();
  }

  /** Those that are taken most too often, by numbers of the sets. */
  List<BitSet> find(int most) {
    Set<BitSet> known = new HashSet<>();
    return taken.stream()
        .limit(MOST_SEEDS)
        .map(this::grown)
        .filter(found -> found.shares > 1 + LEAST)
        .sorted(Comparator.comparingDouble((Found found) -> -found.shares))
        .filter(found -> known.add(bits(found.members)))
        .limit(most)
        .map(found -> bits(joined(found.members, cheap)))
        .toList();
  }

  private Found grown(int seed) {
    List<Integer> members = joined(List.of(seed), taken);
    return new Found(members, members.stream().mapToDouble(c -> shares[c]).sum());
  }

  /** Some rivals and all others, in their order, that clash with every one before. */
  private List<Integer> joined(List<Integer> rivals, List<Integer> others) {
    List<Integer> members = new ArrayList<>(rivals);
    for (int c : others) {
      if (!rivals.contains(c) && clashesWithAll(c, members)) {
        members.add(c);
      }
    }
    return members;
  }

  private boolean clashesWithAll(int c, List<Integer> members) {
    for (int member : members) {
      if (!clashes.clash(columns.get(c), columns.get(member))) {
        return false;
      }
    }
    return true;
  }

  private static BitSet bits(List<Integer> members) {
    BitSet bits = new BitSet();
    members.forEach(bits::set);
    return bits;
  }
}
