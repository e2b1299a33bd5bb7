package skidway.shakeout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import skidway.timber.Piece;

/**
 * The piles of a wave while pieces are tried on them: what one more or less costs, worked out from
 * what changes alone. Pieces that the machine brings stay where they are.
 */
final class Trial {
  private static final int IN_BUNDLE = -1;
  private static final long NOT_KNOWN = -1;

  private final Timbers timbers;
  private final Pricing pricing;
  private final PileRules rules;
  private final double[][] bringM;
  private final int from;
  private final Aside aside;

  /** The pile of each piece of the wave, or {@link #IN_BUNDLE}. */
  private final int[] pileOf;

  private final List<PileDraft> drafts;

  /** From the bottom up. */
  private final List<List<Integer>> piles = new ArrayList<>();

  /** What each pile costs as it is, as long as nothing comes or goes; or {@link #NOT_KNOWN}. */
  private final long[] knownMs;

  Trial(
      Timbers timbers,
      Room room,
      Pricing pricing,
      PileRules rules,
      int from,
      int to,
      List<PileDraft> drafts) {
    this.timbers = timbers;
    this.pricing = pricing;
    this.rules = rules;
    this.from = from;
    this.aside = new Aside(timbers, from, pull -> isOfWave(pull) && !isInBundle(pull));
    this.drafts = drafts;
    bringM = room.bringM(from);
    pileOf = new int[to - from];
    Arrays.fill(pileOf, IN_BUNDLE);
    for (PileDraft draft : drafts) {
      draft.pulls().forEach(pull -> pileOf[pull - from] = piles.size());
      piles.add(new ArrayList<>(draft.pulls()));
    }
    knownMs = new long[piles.size()];
    Arrays.fill(knownMs, NOT_KNOWN);
  }

  int pileCount() {
    return piles.size();
  }

  /** The pieces of a pile that people carry there. */
  List<Integer> carried(int pile) {
    return piles.get(pile).stream().filter(i -> !drafts.get(pile).byMachine(i)).toList();
  }

  boolean isInBundle(int pull) {
    return pileOf[pull - from] == IN_BUNDLE;
  }

  boolean isOn(int pull, int pile) {
    return pileOf[pull - from] == pile;
  }

  /** Whether it is the machine that brings a piece. */
  boolean byMachine(int pull) {
    return !isInBundle(pull) && drafts.get(pileOf[pull - from]).byMachine(pull);
  }

  /**
   * Carries pieces to a pile if that makes the wave cheaper and the pile may stand then; else
   * leaves all as it was.
   */
  boolean carry(List<Integer> pulls, int pile) {
    int place = drafts.get(pile).place();
    if (pulls.stream().anyMatch(pull -> !Double.isFinite(bringM[timbers.stack[pull]][place]))) {
      return false;
    }
    int[] before = pulls.stream().mapToInt(pull -> pileOf[pull - from]).toArray();
    long costMs = costMs(pulls);
    pulls.forEach(pull -> put(pull, pile));
    boolean better =
        costMs(pulls) < costMs
            && mayStand(pile)
            && IntStream.of(before).allMatch(other -> other == IN_BUNDLE || mayStand(other));
    if (!better) {
      for (int k = 0; k < before.length; k++) {
        put(pulls.get(k), before[k]);
      }
    }
    return better;
  }

  /** Leaves pieces in their bundles if that makes the wave cheaper; else on their piles. */
  boolean leave(List<Integer> pulls) {
    int pile = pileOf[pulls.get(0) - from];
    long costMs = costMs(pulls);
    pulls.forEach(pull -> put(pull, IN_BUNDLE));
    boolean better = costMs(pulls) < costMs && mayStand(pile);
    if (!better) {
      pulls.forEach(pull -> put(pull, pile));
    }
    return better;
  }

  private boolean mayStand(int pile) {
    return piles.get(pile).isEmpty() || rules.mayStand(drafts.get(pile).place(), piles.get(pile));
  }

  private void put(int pull, int pile) {
    int old = pileOf[pull - from];
    if (old != IN_BUNDLE) {
      piles.get(old).remove((Integer) pull);
      knownMs[old] = NOT_KNOWN;
    }
    pileOf[pull - from] = pile;
    if (pile != IN_BUNDLE) {
      List<Integer> pulls = piles.get(pile);
      int at = 0;
      while (at < pulls.size() && pulls.get(at) > pull) {
        at++;
      }
      pulls.add(at, pull);
      knownMs[pile] = NOT_KNOWN;
    }
  }

  /** All that depends on where some pieces are. */
  private long costMs(List<Integer> pulls) {
    long sum = 0;
    for (int pull : pulls) {
      int on = pileOf[pull - from];
      sum += on == IN_BUNDLE ? timbers.carryMs[pull] : wayMs(pull, drafts.get(on).place());
    }
    for (int pile = 0; pile < piles.size(); pile++) {
      sum += pileMs(pile);
    }
    return sum + asideMs(pulls);
  }

  private long wayMs(int pull, int place) {
    return pricing.bringMs(pull, bringM[timbers.stack[pull]][place])
        + pricing.layMs(false)
        + pricing.fromPileMs(pull, place);
  }

  private long pileMs(int pile) {
    if (knownMs[pile] == NOT_KNOWN) {
      knownMs[pile] = pileMs(piles.get(pile));
    }
    return knownMs[pile];
  }

  private long pileMs(List<Integer> pulls) {
    long sum = pulls.isEmpty() ? 0 : timbers.time.pileMs();
    for (int n = 0; n < pulls.size(); n++) {
      Piece piece = timbers.piece(pulls.get(n));
      int people = timbers.people[pulls.get(n)];
      sum += pricing.pilePickMs(piece, people, n / pricing.perLayer(piece));
    }
    return sum;
  }

  /** Of some pieces and all that lie over them. */
  private long asideMs(List<Integer> pulls) {
    boolean[] seen = new boolean[pileOf.length];
    int count = 0;
    for (int pull : pulls) {
      count += isAsideAnew(pull, seen) ? 1 : 0;
      for (int upper : timbers.above[pull]) {
        count += isAsideAnew(upper, seen) ? 1 : 0;
      }
    }
    return timbers.time.rehandleMs(count);
  }

  private boolean isAsideAnew(int pull, boolean[] seen) {
    if (!isOfWave(pull) || seen[pull - from]) {
      return false;
    }
    seen[pull - from] = true;
    return aside.isAside(pull);
  }

  private boolean isOfWave(int pull) {
    return pull >= from && pull < from + pileOf.length;
  }

  /** The piles as they are now, those that are left empty taken away. */
  List<PileDraft> piles() {
    return IntStream.range(0, piles.size())
        .filter(p -> !piles.get(p).isEmpty())
        .mapToObj(p -> new PileDraft(drafts.get(p).place(), piles.get(p), drafts.get(p).trips()))
        .toList();
  }
}
