package skidway.staging;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import skidway.limits.AreaLoad;
import skidway.limits.Overhang;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.timber.Bundle;

/**
 * Finds the exact best bottom-to-top order of the few bundles of a stack and remembers it.
 *
 * <p>What a bundle costs on top of others depends only on which others are beneath it: its pieces
 * needed later than the first piece needed from beneath are rehandled; if something beneath comes
 * off a truck later, it is set down first. So the cheapest order is a shortest path over subsets:
 * 2^k · k steps for k bundles, k at most the limit of tiers.
 */
final class StackEvaluator {
  private static final long NEVER = Long.MAX_VALUE;

  /** Orders remembered before all are forgotten; only memory depends on it. */
  private static final int MOST_KNOWN = 400_000;

  private record Key(long first, long second, long third, int loadClass) {}

  private final Board board;
  private final Waits waits;
  private final int mostTiers;
  private final double endOverhangM;
  private final double sideOverhangM;
  private final double bearerReachM;
  private final double[] loadClasses;
  private final Map<Key, StackCost> known = new HashMap<>();

  StackEvaluator(Board board, Waits waits) {
    this.board = board;
    this.waits = waits;
    this.mostTiers = (int) board.task.settings().get(Setting.STACK_TIERS);
    this.endOverhangM = board.task.settings().get(Setting.END_OVERHANG);
    this.sideOverhangM = board.task.settings().get(Setting.SIDE_OVERHANG);
    this.bearerReachM = board.task.settings().get(Setting.BEARER_REACH);
    this.loadClasses = Arrays.stream(board.allowedKpa).distinct().sorted().toArray();
  }

  /**
   * Best order of a set of bundles on a stack spot; {@code set} is growing, its first {@code k}
   * count.
   */
  StackCost best(int[] set, int k, int spot) {
    if (k == 0) {
      return StackCost.EMPTY;
    }
    if (k > mostTiers || tooHigh(set, k) || !fitsMass(set, k, spot)) {
      return StackCost.ILLEGAL;
    }
    Key key = key(set, k, spot);
    StackCost cost = known.get(key);
    if (cost == null) {
      if (known.size() >= MOST_KNOWN) {
        known.clear();
      }
      cost = search(set, k, spot, true, waits);
      known.put(key, cost);
    }
    return cost;
  }

  /** The rule that keeps a set of bundles from lying on a stack spot in any order. */
  Rule refusal(int[] set, int k, int spot) {
    if (k > mostTiers) {
      return Rule.STACK_TIERS;
    }
    if (tooHigh(set, k)) {
      return Rule.STACK_HEIGHT;
    }
    if (!fitsMass(set, k, spot)) {
      return Rule.SPOT_MASS;
    }
    if (!search(set, k, spot, false, Waits.FREE).legal()) {
      return Rule.TIER_SUPPORT;
    }
    return search(set, k, spot, true, Waits.FREE).legal() ? Rule.STEPS_BUILD : Rule.ZONE_LOAD;
  }

  /** What a stack costs in a given order, legal or not. */
  StackCost inOrder(int[] order, int k, int spot) {
    long rehandle = 0;
    long setDown = 0;
    boolean legal = k <= mostTiers && !tooHigh(order, k);
    legal &= bears(order, k, order[0], spot) && fitsMass(order, k, spot);
    for (int i = 1; i < k; i++) {
      int firstPull = Integer.MAX_VALUE;
      int lastOff = -1;
      for (int j = 0; j < i; j++) {
        legal &= supports(order[j], order[i]);
        firstPull = Math.min(firstPull, board.pulls[order[j]][0]);
        lastOff = Math.max(lastOff, order[j]);
      }
      rehandle += rehandleMs(order[i], firstPull);
      setDown += lastOff > order[i] ? board.time.liftMs(0) : 0;
    }
    return new StackCost(legal, Arrays.stream(order, 0, k).boxed().toList(), rehandle, setDown);
  }

  private StackCost search(int[] set, int k, int spot, boolean loaded, Waits allowed) {
    int full = (1 << k) - 1;
    long[] cost = new long[full + 1];
    int[] top = new int[full + 1];
    Arrays.fill(cost, NEVER);
    cost[0] = 0;
    for (int below = 0; below < full; below++) {
      if (cost[below] == NEVER) {
        continue;
      }
      for (int u = 0; u < k; u++) {
        if ((below >> u & 1) == 1) {
          continue;
        }
        long step =
            below == 0 ? lowest(set, k, u, spot, loaded) : onTopOf(set, k, below, u, allowed);
        int with = below | 1 << u;
        if (step != NEVER && cost[below] + step < cost[with]) {
          cost[with] = cost[below] + step;
          top[with] = u;
        }
      }
    }
    if (cost[full] == NEVER) {
      return StackCost.ILLEGAL;
    }
    int[] order = new int[k];
    for (int left = full, i = k - 1; left != 0; i--) {
      order[i] = set[top[left]];
      left ^= 1 << top[left];
    }
    return inOrder(order, k, spot);
  }

  private long lowest(int[] set, int k, int u, int spot, boolean loaded) {
    return !loaded || bears(set, k, set[u], spot) ? 0 : NEVER;
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

  /** Whether zone and spot carry the whole stack when this bundle is the lowest. */
  private boolean bears(int[] set, int k, int lowest, int spot) {
    Bundle base = board.bundles.get(lowest);
    double area = AreaLoad.bearingM2(base.lengthM(), base.widthM(), bearerReachM);
    return AreaLoad.kpa(massKg(set, k), area) <= board.allowedKpa[spot] + 1e-9;
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

  private boolean tooHigh(int[] set, int k) {
    double sum = 0;
    for (int i = 0; i < k; i++) {
      sum += board.bundles.get(set[i]).heightM() + board.bearerM;
    }
    return sum > board.stackHeightM + 1e-9;
  }

  /** Bundle numbers are below 65,536, so four of them fill a long, and twelve a key. */
  private Key key(int[] set, int k, int spot) {
    long first = packed(set, 0, k);
    long second = packed(set, 4, k);
    long third = packed(set, 8, k);
    int loadClass = Arrays.binarySearch(loadClasses, board.allowedKpa[spot]);
    return new Key(first, second, third, loadClass);
  }

  private static long packed(int[] set, int from, int k) {
    long packed = 0;
    for (int i = from; i < Math.min(k, from + 4); i++) {
      packed = packed << 16 | (set[i] + 1);
    }
    return packed;
  }
}
