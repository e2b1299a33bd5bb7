package skidway.bound;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Raises a lower bound by way of sets that are known (column generation, in turn with {@link
 * DualAscent}): prices that are good for the known sets are found quickly; then spots are asked for
 * sets that gain even more at those prices. As soon as some of the spots know so much better that
 * the prices cannot be good, the rest are spared and the next prices are sought. What is proven is
 * what all spots together answer.
 */
final class AscentBySets {
  /** Spots asked at least before the rest are spared, as a part of all. */
  private static final int PART = 32;

  /**
   * So much of what prices raise the bound of the known sets by must be left when all spots have
   * been asked, going by those asked so far.
   */
  private static final double HOPE = 0.9;

  /** Steps upwards between two times of asking; more of them after prices that were good. */
  private static final int CLIMBS = 300;

  private static final double MORE_CLIMBS = 1.25;
  private static final int MOST_CLIMBS = 1000;

  /** Of the gap: less than this is not worth asking for. */
  private static final double LITTLE = 0.002;

  /** Sets looked at for one spot: a part of those that are left. */
  private static final int PART_FOR_A_SPOT = 100;

  private final Relaxation relaxation;
  private final KnownSets known;
  private final long begunAsking;
  private final long begunClimbing;
  private final int spots;
  private final int stride;
  private Answer best;
  private double climbs = CLIMBS;
  private int next;
  private long asked;
  private boolean learnt;

  AscentBySets(Relaxation relaxation, KnownSets known, Answer start) {
    this.relaxation = relaxation;
    this.known = known;
    this.best = start;
    this.begunAsking = relaxation.steps();
    this.begunClimbing = known.steps();
    this.spots = start.gainMs.length;
    this.stride = stride(spots);
  }

  /** The highest bound so far. */
  Answer best() {
    return best;
  }

  /** Sets looked at so far, known ones at their share. */
  private long steps() {
    return stepsAsking() + known.steps() - begunClimbing;
  }

  /**
   * Goes on until the bound reaches a plan's cost, the steps are spent, or next to nothing is left
   * to gain.
   */
  void run(long aimMs, long mostSteps, BooleanSupplier stopped) {
    boolean isLast = false;
    while (best.valueMs < aimMs && !isLast && !stopped.getAsBoolean()) {
      DualAscent ascent = new DualAscent(known, best.prices, DualAscent.EAGER);
      ascent.climb(aimMs, (int) climbs);
      if (ascent.bestMs() - best.valueMs < LITTLE * (aimMs - best.valueMs)) {
        return;
      }
      isLast = mostSteps - steps() < stepsForAll();
      Optional<Answer> answer = ask(ascent.best(), isLast, mostSteps - steps());
      if (answer.filter(a -> a.valueMs > best.valueMs).isPresent()) {
        best = answer.get();
        climbs = Math.min(MOST_CLIMBS, MORE_CLIMBS * climbs);
      } else if (!learnt) {
        return;
      }
    }
  }

  private long stepsAsking() {
    return relaxation.steps() - begunAsking;
  }

  /** Sets that are looked at when all spots are asked, going by those asked so far. */
  private long stepsForAll() {
    return asked == 0 ? 0 : stepsAsking() / asked * spots;
  }

  /**
   * Asks the spots for what they gain, one here and one there so that a part of them speaks for
   * all.
   *
   * @param all whether none may be spared
   * @return nothing if the rest were spared
   */
  private Optional<Answer> ask(Prices prices, boolean all, long stepsLeft) {
    long knownMs = known.valueMs(prices, new double[prices.ms.length]);
    double enoughMs = best.valueMs + HOPE * (knownMs - best.valueMs);
    long mostSteps = Math.max(Relaxation.FOR_A_SPOT, stepsLeft / PART_FOR_A_SPOT);
    long[] gainMs = new long[spots];
    double lossMs = 0;
    learnt = false;
    for (int i = 0; i < spots; i++) {
      if (!all && i >= spots / PART && knownMs - lossMs / i * spots < enoughMs) {
        return Optional.empty();
      }
      gainMs[next] = relaxation.gainMs(next, prices, mostSteps);
      lossMs += known.gainMs(next) - gainMs[next];
      for (int[] set : relaxation.found()) {
        learnt |= known.add(next, set, prices);
      }
      asked++;
      next = (next + stride) % spots;
    }
    return Optional.of(relaxation.answer(prices, gainMs));
  }

  /** Leads to every spot before it comes back, and each time far from the last few. */
  private static int stride(int spots) {
    int stride = (int) (0.618 * spots);
    while (stride > 1 && gcd(stride, spots) > 1) {
      stride--;
    }
    return Math.max(1, stride);
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
