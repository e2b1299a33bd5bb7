package skidway.staging;

import java.util.function.Function;
import skidway.plan.Plan;
import skidway.plan.Proof;

/**
 * Searches in rounds, each twice as long as the one before and all together no longer than allowed,
 * until a plan is proven good enough. Rounds end at counts of work and not at times, so that any
 * machine stops at the same plan.
 */
final class Rounds {
  /** The first round has this share of what may be spent; the last one half of it. */
  private static final int FIRST = 16;

  private final SearchLimits limits;
  private final StopButton stop;

  Rounds(SearchLimits limits, StopButton stop) {
    this.limits = limits;
    this.stop = stop;
  }

  /** The best plan of all rounds; a single round where only the best is good enough. */
  Plan best(Function<SearchLimits, Plan> round) {
    if (limits.until() <= 0) {
      return round.apply(limits);
    }
    Plan best = round.apply(part(FIRST));
    for (int part = FIRST / 2; part > 1 && !isGoodEnough(best) && !stop.pressed(); part /= 2) {
      Plan next = round.apply(part(part));
      best = isBetter(next, best) ? next : best;
    }
    return best;
  }

  private SearchLimits part(int part) {
    long calculations = Math.max(1, limits.calculations() / part);
    return new SearchLimits(limits.seed(), calculations, limits.until());
  }

  private boolean isGoodEnough(Plan plan) {
    return plan.proof().map(Proof::share).filter(share -> share <= limits.until()).isPresent();
  }

  /** Of two plans that take the same the later one has more behind its proof. */
  private static boolean isBetter(Plan next, Plan best) {
    return next.unplaced().size() != best.unplaced().size()
        ? next.unplaced().size() < best.unplaced().size()
        : next.effort().totalS() <= best.effort().totalS();
  }
}
