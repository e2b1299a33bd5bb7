package skidway.staging;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.rules.Rule;
import skidway.rules.Setting;

/**
 * Finds the exact best bottom-to-top order of the few bundles of a stack and remembers it.
 *
 * <p>What a bundle costs on top of others depends only on which others are beneath it ({@link
 * Stacking}). So the cheapest order is a shortest path over subsets: 2^k · k steps for k bundles, k
 * at most the limit of tiers. Bundles that never meet are stacks of their own, one after the other.
 */
final class StackEvaluator {
  private final Board board;
  private final Waits waits;
  private final int mostTiers;
  private final KnownStacks known = new KnownStacks();
  private final Strangers strangers;

  /** By spot, bottom to top: stacks whose order is not to be chosen. */
  private final Map<Integer, List<Integer>> given;

  StackEvaluator(Board board, Waits waits) {
    this(board, waits, Map.of());
  }

  StackEvaluator(Board board, Waits waits, Map<Integer, List<Integer>> given) {
    this.board = board;
    this.waits = waits;
    this.given = Map.copyOf(given);
    this.strangers = new Strangers(board, waits);
    this.mostTiers = (int) board.task.settings().get(Setting.STACK_TIERS);
  }

  /** The same with a memory of its own. */
  StackEvaluator apart() {
    return new StackEvaluator(board, waits);
  }

  /**
   * Best order of a set of bundles on a stack spot; {@code set} is growing, its first {@code k}
   * count.
   */
  StackCost best(int[] set, int k, int spot) {
    List<Integer> order = given.getOrDefault(spot, List.of());
    if (k > 0 && order.size() == k && Arrays.stream(set, 0, k).allMatch(order::contains)) {
      return inOrder(order.stream().mapToInt(b -> b).toArray(), k, spot);
    }
    if (board.moments == 1 || k < 2) {
      return together(set, k, spot);
    }
    Integer[] byTime = Arrays.stream(set, 0, k).boxed().toArray(Integer[]::new);
    Arrays.sort(
        byTime, Comparator.comparingInt((Integer b) -> board.comes[b]).thenComparing(b -> b));
    StackCost all = StackCost.EMPTY;
    int from = 0;
    int last = -1;
    for (int i = 0; i <= k; i++) {
      if (i > from && (i == k || board.comes[byTime[i]] > last)) {
        int[] meeting = Arrays.stream(byTime, from, i).mapToInt(b -> b).sorted().toArray();
        all = all.then(together(meeting, meeting.length, spot));
        from = i;
      }
      last = i == k ? last : Math.max(last, board.lastMoment(byTime[i]));
    }
    return all;
  }

  /** Whether no stack can have both of two bundles: seen at a glance. */
  boolean neverTogether(int a, int b) {
    return given.isEmpty() && strangers.are(a, b);
  }

  private StackCost together(int[] set, int k, int spot) {
    if (k == 0) {
      return StackCost.EMPTY;
    }
    if (k > KnownStacks.MOST_BUNDLES
        || movesWhatStays(set, k, spot)
        || (!asItStood(set, k, spot) && refusedAtOnce(set, k, spot).isPresent())) {
      return StackCost.ILLEGAL;
    }
    StackCost cost = known.find(set, k, board.footing[spot], homeHere(set, k, spot));
    if (cost == null) {
      cost = new Stacking(board, new Pile(board, set, k, spot), waits, Stacking.Heed.ALL).best();
      known.keep(cost);
    }
    return cost;
  }

  /** The rule that keeps a set of bundles from lying on a stack spot in any order. */
  Rule refusal(int[] set, int k, int spot) {
    Optional<Rule> atOnce = refusedAtOnce(set, k, spot);
    if (atOnce.isPresent()) {
      return atOnce.get();
    }
    if (!hasOrder(set, k, spot, Stacking.Heed.SUPPORT)) {
      return Rule.TIER_SUPPORT;
    }
    if (!hasOrder(set, k, spot, Stacking.Heed.SUPPORT_AND_SLENDER)) {
      return Rule.STACK_SLENDER;
    }
    return hasOrder(set, k, spot, Stacking.Heed.ALL) ? Rule.STEPS_BUILD : board.loadRule(spot);
  }

  private boolean hasOrder(int[] set, int k, int spot, Stacking.Heed heed) {
    return new Stacking(board, new Pile(board, set, k, spot), Waits.FREE, heed).best().legal();
  }

  /** What a stack costs in a given order, legal or not. */
  StackCost inOrder(int[] order, int k, int spot) {
    Pile pile = new Pile(board, order, k, spot);
    StackCost cost = new Stacking(board, pile, Waits.FREE, Stacking.Heed.ALL).asListed();
    boolean legal = cost.legal() && refusedAtOnce(order, k, spot).isEmpty();
    return legal ? cost : cost.broken();
  }

  private boolean movesWhatStays(int[] set, int k, int spot) {
    for (int i = 0; i < k; i++) {
      int home = board.home[set[i]];
      if (home != Occupancy.NOWHERE && home != spot && !waits.mayLift(board, set[i])) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is the stack that lay there from the start, or the lower part of it. */
  private boolean asItStood(int[] set, int k, int spot) {
    for (int i = 0; i < k; i++) {
      if (board.home[set[i]] != spot || board.homeTier[set[i]] > k) {
        return false;
      }
    }
    return true;
  }

  /** Whether a set of bundles is too high, too heavy or too many tiers, whatever their order. */
  boolean isTooMuch(int[] set, int k, int spot) {
    return refusedAtOnce(set, k, spot).isPresent();
  }

  /** The rule broken by the bundles that are there together, whatever their order. */
  private Optional<Rule> refusedAtOnce(int[] set, int k, int spot) {
    for (int moment = 0; moment < board.moments; moment++) {
      int tiers = 0;
      double heightM = 0;
      double massKg = 0;
      for (int i = 0; i < k; i++) {
        if (board.isThere(set[i], moment)) {
          tiers++;
          heightM += board.tierM[set[i]];
          massKg += board.massKg[set[i]];
        }
      }
      if (tiers > mostTiers) {
        return Optional.of(Rule.STACK_TIERS);
      }
      if (heightM > board.mostHeightM[spot] + 1e-9) {
        return Optional.of(board.isCapped(spot) ? Rule.DECK_EDGE : Rule.STACK_HEIGHT);
      }
      if (massKg > board.massLimitKg[spot] + 1e-9) {
        return Optional.of(Rule.SPOT_MASS);
      }
    }
    return Optional.empty();
  }

  /** The spot, if some of the bundles lay there from the start. */
  private int homeHere(int[] set, int k, int spot) {
    int home = Occupancy.NOWHERE;
    for (int i = 0; i < k; i++) {
      home = board.home[set[i]] == spot ? spot : home;
    }
    return home;
  }
}
