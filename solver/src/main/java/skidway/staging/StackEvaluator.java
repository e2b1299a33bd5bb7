package skidway.staging;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import skidway.limits.Overhang;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.timber.Bundle;

/**
 * Finds the exact best bottom-to-top order of the few bundles of a stack and remembers it.
 *
 * <p>What a bundle costs on top of others depends only on which others are beneath it: how high up
 * its pieces are picked; its pieces needed later than the first piece needed from beneath are
 * rehandled; if something beneath comes off a truck later, it is set down first. So the cheapest
 * order is a shortest path over subsets: 2^k · k steps for k bundles, k at most the limit of tiers.
 */
final class StackEvaluator {
  private static final long NEVER = Long.MAX_VALUE;

  /** Orders remembered before all are forgotten; only memory depends on it. */
  private static final int MOST_KNOWN = 400_000;

  private record Key(long first, long second, long third, int footing) {}

  private final Board board;
  private final Waits waits;
  private final int mostTiers;
  private final double endOverhangM;
  private final double sideOverhangM;
  private final Map<Key, StackCost> known = new HashMap<>();

  StackEvaluator(Board board, Waits waits) {
    this.board = board;
    this.waits = waits;
    this.mostTiers = (int) board.task.settings().get(Setting.STACK_TIERS);
    this.endOverhangM = board.task.settings().get(Setting.END_OVERHANG);
    this.sideOverhangM = board.task.settings().get(Setting.SIDE_OVERHANG);
  }

  /**
   * Best order of a set of bundles on a stack spot; {@code set} is growing, its first {@code k}
   * count.
   */
  StackCost best(int[] set, int k, int spot) {
    if (k == 0) {
      return StackCost.EMPTY;
    }
    if (k > mostTiers || tooHigh(set, k, spot) || !fitsMass(set, k, spot)) {
      return StackCost.ILLEGAL;
    }
    Key key = key(set, k, spot);
    StackCost cost = known.get(key);
    if (cost == null) {
      if (known.size() >= MOST_KNOWN) {
        known.clear();
      }
      int[] order = search(set, k, spot, Strictness.ALL, waits);
      cost = order.length == 0 ? StackCost.ILLEGAL : inOrder(order, k, spot);
      known.put(key, cost);
    }
    return cost;
  }

  /** The rule that keeps a set of bundles from lying on a stack spot in any order. */
  Rule refusal(int[] set, int k, int spot) {
    if (k > mostTiers) {
      return Rule.STACK_TIERS;
    }
    if (tooHigh(set, k, spot)) {
      return board.isCapped(spot) ? Rule.DECK_EDGE : Rule.STACK_HEIGHT;
    }
    if (!fitsMass(set, k, spot)) {
      return Rule.SPOT_MASS;
    }
    if (!hasOrder(set, k, spot, Strictness.SUPPORT)) {
      return Rule.TIER_SUPPORT;
    }
    if (!hasOrder(set, k, spot, Strictness.SUPPORT_AND_SLENDER)) {
      return Rule.STACK_SLENDER;
    }
    return hasOrder(set, k, spot, Strictness.ALL) ? Rule.STEPS_BUILD : board.loadRule(spot);
  }

  private boolean hasOrder(int[] set, int k, int spot, Strictness heed) {
    return search(set, k, spot, heed, Waits.FREE).length > 0;
  }

  /** Which rules a search heeds: all of them, unless it looks for the one that binds. */
  private enum Strictness {
    SUPPORT,
    SUPPORT_AND_SLENDER,
    ALL
  }

  /** What a stack costs in a given order, legal or not. */
  StackCost inOrder(int[] order, int k, int spot) {
    long pick = 0;
    long rehandle = 0;
    long setDown = 0;
    double heightM = heightM(order, k);
    double baseM = 0;
    boolean legal = k <= mostTiers && !tooHigh(order, k, spot);
    legal &= bears(order, k, order[0], spot) && fitsMass(order, k, spot);
    for (int i = 0; i < k; i++) {
      baseM += board.bearerM;
      pick += board.pickMs(order[i], baseM);
      legal &= !tooSlender(order[i], heightM - baseM, spot);
      baseM += board.bundles.get(order[i]).heightM();
      int firstPull = Integer.MAX_VALUE;
      int lastOff = -1;
      for (int j = 0; j < i; j++) {
        legal &= supports(order[j], order[i]);
        firstPull = Math.min(firstPull, board.pulls[order[j]][0]);
        lastOff = Math.max(lastOff, order[j]);
      }
      rehandle += i == 0 ? 0 : rehandleMs(order[i], firstPull);
      setDown += lastOff > order[i] ? board.time.liftMs(0) : 0;
    }
    return new StackCost(
        legal, Arrays.stream(order, 0, k).boxed().toList(), pick, rehandle, setDown);
  }

  /** The cheapest order that keeps the rules heeded; empty if there is none. */
  private int[] search(int[] set, int k, int spot, Strictness heed, Waits allowed) {
    int full = (1 << k) - 1;
    long[] cost = new long[full + 1];
    int[] top = new int[full + 1];
    Arrays.fill(cost, NEVER);
    cost[0] = 0;
    double[] heightBelowM = new double[full + 1];
    double heightM = heightM(set, k);
    for (int below = 0; below < full; below++) {
      if (cost[below] == NEVER) {
        continue;
      }
      for (int u = 0; u < k; u++) {
        if ((below >> u & 1) == 1) {
          continue;
        }
        double baseM = heightBelowM[below] + board.bearerM;
        long step = below == 0 ? lowest(set, k, u, spot, heed) : onTopOf(set, k, below, u, allowed);
        if (step == NEVER
            || (heed != Strictness.SUPPORT && tooSlender(set[u], heightM - baseM, spot))) {
          continue;
        }
        step += board.pickMs(set[u], baseM);
        int with = below | 1 << u;
        heightBelowM[with] = baseM + board.bundles.get(set[u]).heightM();
        if (cost[below] + step < cost[with]) {
          cost[with] = cost[below] + step;
          top[with] = u;
        }
      }
    }
    if (cost[full] == NEVER) {
      return new int[0];
    }
    int[] order = new int[k];
    for (int left = full, i = k - 1; left != 0; i--) {
      order[i] = set[top[left]];
      left ^= 1 << top[left];
    }
    return order;
  }

  private long lowest(int[] set, int k, int u, int spot, Strictness heed) {
    return heed != Strictness.ALL || bears(set, k, set[u], spot) ? 0 : NEVER;
  }

  /** Cost of laying one more bundle on those beneath, or NEVER if a rule forbids it. */
  private long onTopOf(int[] set, int k, int below, int u, Waits allowed) {
    int firstPull = Integer.MAX_VALUE;
    boolean waiting = false;
    for (int j = 0; j < k; j++) {
      if ((below >> j & 1) == 0) {
        continue;
      }
      if (!supports(set[j], set[u])) {
        return NEVER;
      }
      if (set[j] > set[u]) {
        if (!allowed.mayWaitFor(set[u], set[j])) {
          return NEVER;
        }
        waiting = true;
      }
      firstPull = Math.min(firstPull, board.pulls[set[j]][0]);
    }
    return rehandleMs(set[u], firstPull) + (waiting ? board.time.liftMs(0) : 0);
  }

  private long rehandleMs(int bundle, int firstPullBeneath) {
    int[] pulls = board.pulls[bundle];
    int at = Arrays.binarySearch(pulls, firstPullBeneath);
    int earlier = at >= 0 ? at : -at - 1;
    return board.time.rehandleMs(pulls.length - earlier);
  }

  private boolean supports(int lower, int upper) {
    Bundle below = board.bundles.get(lower);
    Bundle above = board.bundles.get(upper);
    return Overhang.eachEndM(above.lengthM(), below.lengthM()) <= endOverhangM + 1e-9
        && Overhang.eachEndM(above.widthM(), below.widthM()) <= sideOverhangM + 1e-9;
  }

  /** Whether the stack above a bundle's underside is too high for the bundle's width. */
  private boolean tooSlender(int bundle, double aboveM, int spot) {
    Bundle base = board.bundles.get(bundle);
    double widthM = Math.min(base.lengthM(), base.widthM());
    return aboveM > board.mostSlender[spot] * widthM + 1e-9;
  }

  /** Whether the zone carries the whole stack when this bundle is the lowest. */
  private boolean bears(int[] set, int k, int lowest, int spot) {
    return massKg(set, k) <= board.mostKg[board.footing[spot]][lowest] + 1e-9;
  }

  private boolean fitsMass(int[] set, int k, int spot) {
    return massKg(set, k) <= board.massLimitKg[spot] + 1e-9;
  }

  private double massKg(int[] set, int k) {
    double sum = 0;
    for (int i = 0; i < k; i++) {
      sum += board.massKg[set[i]];
    }
    return sum;
  }

  private double heightM(int[] set, int k) {
    double sum = 0;
    for (int i = 0; i < k; i++) {
      sum += board.bundles.get(set[i]).heightM() + board.bearerM;
    }
    return sum;
  }

  private boolean tooHigh(int[] set, int k, int spot) {
    return heightM(set, k) > board.mostHeightM[spot] + 1e-9;
  }

  /** Bundle numbers are below 65,536, so four of them fill a long, and twelve a key. */
  private Key key(int[] set, int k, int spot) {
    long first = packed(set, 0, k);
    long second = packed(set, 4, k);
    long third = packed(set, 8, k);
    return new Key(first, second, third, board.footing[spot]);
  }

  private static long packed(int[] set, int from, int k) {
    long packed = 0;
    for (int i = from; i < Math.min(k, from + 4); i++) {
      packed = packed << 16 | (set[i] + 1);
    }
    return packed;
  }
}
