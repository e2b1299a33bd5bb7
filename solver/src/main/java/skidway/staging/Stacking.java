package skidway.staging;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import skidway.limits.Overhang;
import skidway.timber.Bundle;

/**
 * Lays the bundles of a pile on each other. What a bundle costs on top of others depends only on
 * which of them are there while it is: how high up its pieces are picked; its pieces of later turns
 * than the first piece needed from beneath are rehandled, but for those that its own layers have
 * moved aside anyway; if something beneath comes off a truck later, it is set down first.
 *
 * <p>Where no machine unloads nothing is set down: what comes off later lies higher.
 *
 * <p>Bundles that lay on the spot from the start cost nothing as long as nothing beneath them
 * changes; else they are lifted aside and back.
 */
final class Stacking {
  private static final long NEVER = Long.MAX_VALUE;
  private static final int[] NOTHING = {};

  /** Which rules are heeded: all of them, unless one looks for the one that binds. */
  enum Heed {
    SUPPORT,
    SUPPORT_AND_SLENDER,
    ALL
  }

  private final Board board;
  private final Pile pile;
  private final Waits waits;
  private final Heed heed;

  /** Those that lay here from the start. */
  private final int homes;

  /** For each bundle those that may not be beneath it while both are there, for want of support. */
  private final int[] unsupportive;

  /** For each bundle those that may not be beneath it while both are there, whatever they bear. */
  private final int[] closed;

  /** For each bundle those that come at a later moment. */
  private final int[] later;

  /** For each bundle those beneath which it must be set down first. */
  private final int[] waitedFor;

  /** For each set of bundles the one that has the piece of the earliest turn. */
  private final int[] neededFirst;

  /** For each bundle what it rehandles for each other beneath it alone. */
  private final long[][] rehandleMs;

  /** For each bundle those that could not come on top any more once it is laid. */
  private final int[] barred;

  /** For each bundle what is too heavy for it, or for its bearers, to lie beneath. */
  private final int[][] tooMuch;

  /** The same for bundles at the bottom that are not lifted and keep the bearers they have. */
  private final int[][] tooMuchUntouched;

  Stacking(Board board, Pile pile, Waits waits, Heed heed) {
    this.board = board;
    this.pile = pile;
    this.waits = waits;
    this.heed = heed;
    this.homes = homes();
    this.unsupportive = new int[pile.size];
    this.closed = new int[pile.size];
    this.later = new int[pile.size];
    this.waitedFor = new int[pile.size];
    this.rehandleMs = new long[pile.size][pile.size];
    for (int u = 0; u < pile.size; u++) {
      compareWithOthers(u);
    }
    this.neededFirst = neededFirst();
    this.barred = new int[pile.size];
    this.tooMuch = new int[pile.size][];
    this.tooMuchUntouched = new int[pile.size][];
    for (int u = 0; u < pile.size; u++) {
      barred[u] = barredBy(u);
      tooMuch[u] = tooMuchFor(u, false);
      boolean undermost = isHome(u) && board.homeTier[pile.bundles[u]] == 1;
      tooMuchUntouched[u] = undermost ? tooMuchFor(u, true) : tooMuch[u];
    }
  }

  private int homes() {
    int homes = 0;
    for (int u = 0; u < pile.size; u++) {
      homes |= board.home[pile.bundles[u]] == pile.spot ? 1 << u : 0;
    }
    return homes;
  }

  private int barredBy(int u) {
    int barredBy = 0;
    for (int v = 0; v < pile.size; v++) {
      int mustNotBeBeneath = later[v] | (pile.with[v] & (closed[v] | unsupportive[v]));
      barredBy |= v != u && (mustNotBeBeneath >> u & 1) == 1 ? 1 << v : 0;
    }
    return barredBy;
  }

  private int[] tooMuchFor(int u, boolean untouched) {
    if (heed != Heed.ALL) {
      return NOTHING;
    }
    double mostKg = board.mostKg(pile.spot, pile.bundles[u], untouched) + 1e-9;
    int[] tooMuchFor = NOTHING;
    for (int there : pile.there) {
      if ((there >> u & 1) == 1 && pile.massKg(there) > mostKg) {
        tooMuchFor = Arrays.copyOf(tooMuchFor, tooMuchFor.length + 1);
        tooMuchFor[tooMuchFor.length - 1] = there;
      }
    }
    return tooMuchFor;
  }

  private void compareWithOthers(int u) {
    int upper = pile.bundles[u];
    for (int j = 0; j < pile.size; j++) {
      int lower = pile.bundles[j];
      if (j == u) {
        continue;
      }
      int bit = 1 << j;
      unsupportive[u] |= supports(lower, upper) ? 0 : bit;
      closed[u] |= !mayWait(u, j) || isOpen(j) ? bit : 0;
      later[u] |= board.comes[lower] > board.comes[upper] ? bit : 0;
      waitedFor[u] |= board.turn[lower] > board.turn[upper] ? bit : 0;
      int moved = board.digging[upper].laterThan(board.digging[lower].first);
      rehandleMs[u][j] = board.time.rehandleMs(moved);
    }
  }

  private boolean supports(int lower, int upper) {
    Bundle below = board.bundles.get(lower);
    Bundle above = board.bundles.get(upper);
    return Overhang.eachEndM(above.lengthM(), below.lengthM()) <= board.endOverhangM + 1e-9
        && Overhang.eachEndM(above.widthM(), below.widthM()) <= board.sideOverhangM + 1e-9;
  }

  private int[] neededFirst() {
    int[] first = new int[pile.all() + 1];
    for (int some = 1; some < first.length; some++) {
      int lowest = Integer.numberOfTrailingZeros(some);
      int others = some & some - 1;
      first[some] =
          others == 0 || firstTurn(lowest) < firstTurn(first[others]) ? lowest : first[others];
    }
    return first;
  }

  private int firstTurn(int u) {
    return board.digging[pile.bundles[u]].first;
  }

  /** The cheapest order that keeps the rules heeded; illegal if there is none. */
  StackCost best() {
    int all = pile.all();
    long[] cost = new long[all + 1];
    int[] top = new int[all + 1];
    boolean[] asItStood = new boolean[all + 1];
    Arrays.fill(cost, NEVER);
    cost[0] = 0;
    startFromWhatStands(cost, asItStood);
    for (int below = 0; below < all; below++) {
      if (cost[below] == NEVER) {
        continue;
      }
      for (int u = 0; u < pile.size; u++) {
        int with = below | 1 << u;
        boolean deadEnd = (all & ~with & barred[u]) != 0;
        if (with == below || deadEnd || isForbidden(below, u) || mustNotBeLifted(u)) {
          continue;
        }
        long onTop = cost[below] + workMs(below, u) + liftAsideMs(below, u);
        if (onTop < cost[with]) {
          cost[with] = onTop;
          top[with] = u;
          asItStood[with] = false;
        }
      }
    }
    if (cost[all] == NEVER) {
      return StackCost.ILLEGAL;
    }
    int[] order = new int[pile.size];
    int left = all;
    for (int i = pile.size - 1; i >= 0 && !asItStood[left]; i--) {
      order[i] = top[left];
      left ^= 1 << top[left];
    }
    int standing = Integer.bitCount(left);
    System.arraycopy(standing(), 0, order, 0, standing);
    return priced(order, standing, true);
  }

  /** The cost of the pile in the order in which its bundles are listed, legal or not. */
  StackCost asListed() {
    int untouched = untouchedAsListed();
    boolean legal = true;
    for (int u = untouched, below = (1 << untouched) - 1; u < pile.size; below |= 1 << u++) {
      legal &= !isForbidden(below, u) && !mustNotBeLifted(u);
    }
    return priced(IntStream.range(0, pile.size).toArray(), untouched, legal);
  }

  private int untouchedAsListed() {
    int[] standing = standing();
    int same = 0;
    boolean borne = true;
    for (int below = 0; same < standing.length && standing[same] == same; below |= 1 << same++) {
      borne &= isBorne(below, same, true);
      if (!borne && !mustStay()) {
        return same;
      }
    }
    return borne || same == pile.size ? same : 0;
  }

  /**
   * What a bundle of the pile rehandles and is set down for on top of all others, or {@link
   * Board#REFUSED} if it may not lie there. Picking is left out.
   */
  long onTopMs(int u) {
    int below = pile.all() & ~(1 << u);
    return isForbidden(below, u) ? Board.REFUSED : rehandleMs(below, u) + setDownMs(below, u);
  }

  private StackCost priced(int[] order, int standing, boolean legal) {
    long pick = 0;
    long rehandle = 0;
    long setDown = 0;
    long aside = 0;
    int below = 0;
    for (int i = 0; i < order.length; i++) {
      int u = order[i];
      pick += pickMs(below, u);
      rehandle += rehandleMs(below, u);
      setDown += setDownMs(below, u);
      aside += i < standing ? 0 : liftAsideMs(below, u);
      below |= 1 << u;
    }
    Integer[] bundles = new Integer[order.length];
    Arrays.setAll(bundles, i -> pile.bundles[order[i]]);
    return new StackCost(legal, List.of(bundles), pick, rehandle, setDown, aside, standing);
  }

  /**
   * The lower part of what lay here may stay as it is if it keeps the rules, or if something of it
   * must not be lifted and nothing comes on top.
   */
  private void startFromWhatStands(long[] cost, boolean[] asItStood) {
    long sum = 0;
    int below = 0;
    boolean sound = true;
    for (int u : standing()) {
      sound &= isBorne(below, u, true);
      sum += workMs(below, u);
      below |= 1 << u;
      if (sound || (below == pile.all() && mustStay())) {
        cost[below] = sum;
        asItStood[below] = true;
      }
    }
  }

  /** Bundles that lay here from the start, bottom to top, up to the first that goes elsewhere. */
  private int[] standing() {
    if (homes == 0) {
      return NOTHING;
    }
    int[] row = new int[pile.size];
    int count = 0;
    for (int tier = 1; tier <= pile.size; tier++) {
      for (int u = 0; u < pile.size; u++) {
        if (isHome(u) && board.homeTier[pile.bundles[u]] == tier) {
          row[count++] = u;
        }
      }
      if (count < tier) {
        break;
      }
    }
    return Arrays.copyOf(row, count);
  }

  /** Whether something of it must not be lifted, so that nobody can put the pile right. */
  private boolean mustStay() {
    return IntStream.range(0, pile.size).anyMatch(this::mustNotBeLifted);
  }

  private boolean isHome(int u) {
    return (homes >> u & 1) == 1;
  }

  private boolean mustNotBeLifted(int u) {
    return isHome(u) && !waits.mayLift(board, pile.bundles[u]);
  }

  /** Whether a rule keeps a bundle off those beneath it. */
  private boolean isForbidden(int below, int u) {
    return mustNotCome(below, u) || !isBorne(below, u, false);
  }

  /** Whether something beneath comes later than it may, or bears nothing new. */
  private boolean mustNotCome(int below, int u) {
    return (below & later[u]) != 0 || (below & pile.with[u] & closed[u]) != 0;
  }

  /** A bundle with cut bands bears nothing new. */
  private boolean isOpen(int j) {
    return board.bearsNothingNew[pile.bundles[j]];
  }

  /**
   * Whether those beneath and the ground bear a bundle, as far as is heeded.
   *
   * @param untouched whether it lies there from the start and is not lifted
   */
  private boolean isBorne(int below, int u, boolean untouched) {
    if ((below & pile.with[u] & unsupportive[u]) != 0) {
      return false;
    }
    return heed == Heed.SUPPORT || !(tooSlender(below, u) || overloads(below, u, untouched));
  }

  /** Whether a bundle may wait until another lies beneath it, if it must. */
  private boolean mayWait(int u, int lower) {
    int upperTurn = board.turn[pile.bundles[u]];
    int lowerTurn = board.turn[pile.bundles[lower]];
    return lowerTurn <= upperTurn
        || (!board.byHand()
            && !board.lies(pile.bundles[u])
            && waits.mayWaitFor(pile.bundles[u], pile.bundles[lower]));
  }

  /** Whether at some time the stack above a bundle's underside is too high for its width. */
  private boolean tooSlender(int below, int u) {
    Bundle base = board.bundles.get(pile.bundles[u]);
    double mostM = board.mostSlender[pile.spot] * Math.min(base.lengthM(), base.widthM());
    for (int there : pile.there) {
      boolean tooHigh =
          (there >> u & 1) == 1
              && pile.heightM(there) - pile.heightM(there & below) - board.bearerM > mostM + 1e-9;
      if (tooHigh) {
        return true;
      }
    }
    return false;
  }

  /** Whether at some time it is the lowest and the zone does not carry what is there then. */
  private boolean overloads(int below, int u, boolean untouched) {
    for (int there : below == 0 && untouched ? tooMuchUntouched[u] : tooMuch[u]) {
      if ((there & below) == 0) {
        return true;
      }
    }
    return false;
  }

  private long workMs(int below, int u) {
    return pickMs(below, u) + rehandleMs(below, u) + setDownMs(below, u);
  }

  private long pickMs(int below, int u) {
    double baseM = pile.heightM(below & pile.whenItComes[u]) + board.bearerM;
    return board.pickMs(pile.bundles[u], baseM);
  }

  private long rehandleMs(int below, int u) {
    int beneath = below & pile.with[u];
    return beneath == 0 ? 0 : rehandleMs[u][neededFirst[beneath]];
  }

  private long setDownMs(int below, int u) {
    return (below & pile.with[u] & waitedFor[u]) != 0 ? board.time.liftMs(0) : 0;
  }

  /** Away and back, and another tag if it comes to lie on another tier. */
  private long liftAsideMs(int below, int u) {
    if (!isHome(u)) {
      return 0;
    }
    int tier = 1 + Integer.bitCount(below & pile.whenItComes[u]);
    boolean sameTier = tier == board.homeTier[pile.bundles[u]];
    return 2 * board.time.liftMs(0) + (sameTier ? 0 : board.time.retagMs());
  }
}
