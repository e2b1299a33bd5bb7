package skidway.staging;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import skidway.rules.Rule;

/**
 * How far the stacks of a plan in the making use up the limits they share. Sums are kept in
 * thousandths as whole numbers, so that taking a stack away leaves exactly what was there before it
 * came.
 */
final class SharedLoads {
  /** A bundle that waits somewhere for a while, beside all stacks. */
  record Extra(SharedLimits.Share share, double massKg) {}

  private final SharedLimits limits;
  private final long[] most;
  private final long[] sum;
  private final SharedLimits.Share[] shares;
  private final double[] massKg;

  /** Spots with a stack that shares a limit. */
  private final BitSet loaded = new BitSet();

  /** Limits whose sum is too much. */
  private final BitSet tooMuch = new BitSet();

  /** Of those, the ones found to be kept all the same since their sum last changed. */
  private final BitSet cleared = new BitSet();

  /** Used again and again. */
  private final SpanBending span = new SpanBending();

  SharedLoads(Board board) {
    limits = board.shared;
    most = new long[limits.count()];
    for (int i = 0; i < most.length; i++) {
      most[i] = (long) Math.floor(limits.most(i) * 1000 + 0.5);
    }
    sum = new long[most.length];
    shares = new SharedLimits.Share[board.spotCount()];
    massKg = new double[board.spotCount()];
    clear();
  }

  void clear() {
    Arrays.fill(sum, 0);
    Arrays.fill(shares, SharedLimits.Share.NONE);
    loaded.clear();
    tooMuch.clear();
    cleared.clear();
  }

  /** From now on a stack of this mass adds this share, instead of what the spot's stack added. */
  void set(int spot, SharedLimits.Share share, double stackKg) {
    if (shares[spot].limits.length + share.limits.length > 0) {
      add(shares[spot], massKg[spot], -1);
      add(share, stackKg, 1);
      shares[spot] = share;
      massKg[spot] = stackKg;
      loaded.set(spot, share.limits.length > 0);
    }
  }

  private void add(SharedLimits.Share share, double stackKg, int sign) {
    for (int i = 0; i < share.limits.length; i++) {
      int at = share.limits[i];
      long before = sum[at];
      long after = before + sign * thousandths(share.perKg[i], stackKg);
      sum[at] = after;
      if (before > most[at] || after > most[at]) {
        tooMuch.set(at, after > most[at]);
        cleared.clear(at);
      }
    }
  }

  private static long thousandths(double perKg, double stackKg) {
    return (long) Math.ceil(1000 * stackKg * perKg - 1e-6);
  }

  /** How many limits are broken. */
  int broken() {
    int broken = 0;
    for (int at = tooMuch.nextSetBit(0); at >= 0; at = tooMuch.nextSetBit(at + 1)) {
      broken += isBroken(at) ? 1 : 0;
    }
    return broken;
  }

  /** By limit that is broken, how much of it is taken, in the unit of its rule. */
  Map<Integer, Double> overtaken() {
    Map<Integer, Double> overtaken = new TreeMap<>();
    for (int at = tooMuch.nextSetBit(0); at >= 0; at = tooMuch.nextSetBit(at + 1)) {
      if (isBroken(at)) {
        overtaken.put(at, limits.isBound(at) ? exactNm(at, List.of()) : sum[at] / 1000.0);
      }
    }
    return overtaken;
  }

  /** The rule of the first limit that is broken. */
  Rule firstBroken() {
    return limits.rule(tooMuch.stream().filter(this::isBroken).findFirst().orElseThrow());
  }

  private boolean isBroken(int at) {
    if (cleared.get(at)) {
      return false;
    }
    boolean kept = limits.isBound(at) && exactNm(at, List.of()) <= limits.most(at);
    cleared.set(at, kept);
    return !kept;
  }

  /** The highest moment of all stacks and some waiting bundles together in one span. */
  private double exactNm(int at, List<Extra> extras) {
    span.clear();
    for (int spot = loaded.nextSetBit(0); spot >= 0; spot = loaded.nextSetBit(spot + 1)) {
      shares[spot].bend(at, massKg[spot], span);
    }
    for (Extra extra : extras) {
      extra.share().bend(at, extra.massKg(), span);
    }
    return span.mostNm(limits.spanM(at));
  }

  /** Whether all limits are kept while some bundles wait beside the stacks. */
  boolean takes(List<Extra> extras) {
    long[] with = sum.clone();
    for (Extra extra : extras) {
      for (int i = 0; i < extra.share().limits.length; i++) {
        with[extra.share().limits[i]] += thousandths(extra.share().perKg[i], extra.massKg());
      }
    }
    for (int at = 0; at < with.length; at++) {
      boolean kept =
          with[at] <= most[at] || (limits.isBound(at) && exactNm(at, extras) <= limits.most(at));
      if (!kept) {
        return false;
      }
    }
    return true;
  }
}
