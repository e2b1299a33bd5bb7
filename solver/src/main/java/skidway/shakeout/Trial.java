package skidway.shakeout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The piles of a wave while pieces are tried on them: what one more or less costs, worked out from
 * what changes alone. Pieces that the machine brings stay where they are.
 *
 * <p>What failed once fails again until something changes that it depends on: the piles that it
 * takes from and brings to, and what lies in the stack of its pieces. So it is not tried before.
 */
final class Trial {
  private static final int IN_BUNDLE = -1;
  private static final long NO_WAY = -1;
  private static final int NEVER = -1;

  private final Timbers timbers;
  private final PileRules rules;
  private final int from;
  private final TriedPile[] piles;

  /** The pile of each piece of the wave, or {@link #IN_BUNDLE}. */
  private final int[] pileOf;

  private final boolean[] byMachine;
  private final boolean[] mayCome;

  /**
   * What a piece costs by pile, all but picking it there; {@link #NO_WAY} if it cannot be taken.
   */
  private final long[][] wayMs;

  private final DugOut dugOut;
  private final long asideMs;

  /** All that carries and lays a piece. */
  private long waysMs;

  /** Changes so far; and how many there had been at the last change of each stack and pile. */
  private int changes;

  private final int[] stackChanged;
  private final int[] pileChanged;

  /** Changes when a piece was last tried in vain, by pile and, at the end, for its bundle. */
  private final int[][] failed;

  /**
   * @param settled so many of the first piles have no piece that pays better elsewhere, nor does
   *     any pay better there
   * @param mayCome pieces that the wave may bring
   */
  Trial(
      Timbers timbers,
      Room room,
      Pricing pricing,
      PileRules rules,
      int from,
      int to,
      List<PileDraft> drafts,
      int settled,
      List<Integer> mayCome) {
    this.timbers = timbers;
    this.rules = rules;
    this.from = from;
    piles = drafts.stream().map(draft -> new TriedPile(draft, pricing)).toArray(TriedPile[]::new);
    pileOf = new int[to - from];
    byMachine = new boolean[to - from];
    this.mayCome = new boolean[to - from];
    mayCome.forEach(pull -> this.mayCome[pull - from] = true);
    Arrays.fill(pileOf, IN_BUNDLE);
    for (int pile = 0; pile < piles.length; pile++) {
      for (int pull : drafts.get(pile).pulls()) {
        pileOf[pull - from] = pile;
        byMachine[pull - from] = drafts.get(pile).byMachine(pull);
      }
    }
    double[][] bringM = room.bringM(from);
    wayMs = new long[to - from][piles.length];
    failed = new int[to - from][piles.length + 1];
    for (int pull = from; pull < to; pull++) {
      Arrays.fill(failed[pull - from], settled, piles.length, NEVER);
      for (int pile = 0; pile < piles.length; pile++) {
        wayMs[pull - from][pile] = wayMs(pricing, bringM, pull, piles[pile].place());
      }
      waysMs += wayMs(pull);
    }
    dugOut = new DugOut(timbers, from, to, pull -> !isInBundle(pull));
    asideMs = timbers.time.rehandleMs(1);
    stackChanged = new int[timbers.stacks.size()];
    pileChanged = new int[piles.length];
    for (int pile = settled; pile < piles.length; pile++) {
      piles[pile].pulls().forEach(pull -> stackChanged[timbers.stack[pull]] = 1);
    }
    changes = 1;
  }

  private long wayMs(Pricing pricing, double[][] bringM, int pull, int place) {
    if (timbers.stack[pull] == Timbers.NOWHERE) {
      return NO_WAY;
    }
    double metres = bringM[timbers.stack[pull]][place];
    return Double.isFinite(metres)
        ? pricing.bringMs(pull, metres) + pricing.layMs(false) + pricing.fromPileMs(pull, place)
        : NO_WAY;
  }

  int pileCount() {
    return piles.length;
  }

  boolean isInBundle(int pull) {
    return pileOf[pull - from] == IN_BUNDLE;
  }

  boolean isOn(int pull, int pile) {
    return pileOf[pull - from] == pile;
  }

  /** Whether it is the machine that brings a piece. */
  boolean byMachine(int pull) {
    return byMachine[pull - from];
  }

  /**
   * Carries a piece to a pile, alone or with all that lie over it, if that makes the wave cheaper
   * and the pile may stand then; else leaves all as it was.
   */
  boolean carry(int pull, int pile) {
    if (!changedSince(failed[pull - from][pile], pull, pile)) {
      return false;
    }
    int[] withAbove = withAbove(pull);
    boolean better = put(new int[] {pull}, pile) || (withAbove.length > 1 && put(withAbove, pile));
    failed[pull - from][pile] = better ? NEVER : changes;
    return better;
  }

  private int[] withAbove(int pull) {
    int[] above = timbers.above[pull];
    int[] all = new int[above.length + 1];
    int count = 0;
    all[count++] = pull;
    for (int upper : above) {
      if (isOfWave(upper) && mayCome[upper - from] && isInBundle(upper)) {
        all[count++] = upper;
      }
    }
    return Arrays.copyOf(all, count);
  }

  /** Leaves a piece in its bundle if that makes the wave cheaper; else on its pile. */
  boolean leave(int pull) {
    int[] failures = failed[pull - from];
    if (!changedSince(failures[piles.length], pull, pileOf[pull - from])) {
      return false;
    }
    boolean better = put(new int[] {pull}, IN_BUNDLE);
    failures[piles.length] = better ? NEVER : changes;
    return better;
  }

  /** Leaves all that people carry to a pile in its bundles if that makes the wave cheaper. */
  boolean leaveAll(int pile) {
    int[] carried = piles[pile].pulls().filter(pull -> !byMachine(pull)).toArray();
    return carried.length > 0 && put(carried, IN_BUNDLE);
  }

  private boolean changedSince(int last, int pull, int pile) {
    int own = pileOf[pull - from];
    return last < stackChanged[timbers.stack[pull]]
        || last < pileChanged[pile]
        || (own != IN_BUNDLE && last < pileChanged[own]);
  }

  private boolean put(int[] pulls, int pile) {
    int[] before = new int[pulls.length];
    for (int k = 0; k < pulls.length; k++) {
      before[k] = pileOf[pulls[k] - from];
      if (pile != IN_BUNDLE && wayMs[pulls[k] - from][pile] == NO_WAY) {
        return false;
      }
    }
    long costMs = costMs();
    long digsMs = pile == IN_BUNDLE ? dugOut.asideCount() * asideMs : digsMs(pulls);
    for (int pull : pulls) {
      put(pull, pile);
    }
    // What is brought is dug out itself no more, and makes others dug out: at most so much is
    // saved.
    boolean mayPay = costMs() - digsMs < costMs;
    if (mayPay) {
      dig(pulls);
    }
    if (mayPay
        && costMs() < costMs
        && mayStand(pile)
        && IntStream.of(before).allMatch(this::mayStand)) {
      note(pulls, before, pile);
      return true;
    }
    for (int k = 0; k < pulls.length; k++) {
      put(pulls[k], before[k]);
    }
    if (mayPay) {
      dig(pulls);
    }
    return false;
  }

  private long digsMs(int[] pulls) {
    int count = 0;
    for (int pull : pulls) {
      count += dugOut.isAside(pull) ? 1 : 0;
    }
    return count * asideMs;
  }

  private void dig(int[] pulls) {
    for (int pull : pulls) {
      dugOut.bring(pull, !isInBundle(pull));
    }
  }

  private void note(int[] pulls, int[] before, int pile) {
    changes++;
    for (int k = 0; k < pulls.length; k++) {
      if (before[k] != IN_BUNDLE) {
        pileChanged[before[k]] = changes;
      }
      if (before[k] == IN_BUNDLE || pile == IN_BUNDLE) {
        stackChanged[timbers.stack[pulls[k]]] = changes;
      }
    }
    if (pile != IN_BUNDLE) {
      pileChanged[pile] = changes;
    }
  }

  private boolean mayStand(int pile) {
    return pile == IN_BUNDLE
        || piles[pile].isEmpty()
        || rules.mayStand(piles[pile].place(), piles[pile].list());
  }

  private void put(int pull, int pile) {
    int old = pileOf[pull - from];
    waysMs -= wayMs(pull);
    if (old != IN_BUNDLE) {
      piles[old].remove(pull);
    }
    pileOf[pull - from] = pile;
    if (pile != IN_BUNDLE) {
      piles[pile].add(pull);
    }
    waysMs += wayMs(pull);
  }

  private long wayMs(int pull) {
    int pile = pileOf[pull - from];
    return pile == IN_BUNDLE ? timbers.carryMs[pull] : wayMs[pull - from][pile];
  }

  private long costMs() {
    long sum = waysMs + dugOut.asideCount() * asideMs;
    for (TriedPile pile : piles) {
      sum += pile.costMs();
    }
    return sum;
  }

  private boolean isOfWave(int pull) {
    return pull >= from && pull - from < pileOf.length;
  }

  /** The piles as they are now, those that are left empty taken away. */
  List<PileDraft> piles() {
    return Arrays.stream(piles).filter(pile -> !pile.isEmpty()).map(TriedPile::draft).toList();
  }
}
