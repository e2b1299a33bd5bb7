package skidway.bound;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * What every plan costs at least. Starts low and is raised step by step; stopped at any time it
 * holds. The same ground, aims and steps give the same bound on any machine.
 */
public final class LowerBound {
  private final Ground ground;
  private final int moments;
  private final Cliques cliques;
  private final Openings openings;
  private int mayLeave;
  private Relaxation relaxation;
  private KnownSets known;
  private @Nullable Answer answer;

  /** At the prices of which more sets count than can be gathered. */
  private @Nullable Answer tooMany;

  private @Nullable Pool pool;
  private long provenMs;

  /**
   * @param moments how many there are, at most 64
   * @param mayLeave how many bundles a plan may leave without a spot
   */
  public LowerBound(Ground ground, int moments, int mayLeave) {
    this.ground = ground;
    this.moments = moments;
    this.mayLeave = mayLeave;
    this.cliques = Cliques.of(ground);
    this.openings = Openings.of(ground, (b, s) -> true);
    this.relaxation = new Relaxation(ground, cliques, openings, moments, mayLeave);
    this.known = new KnownSets(ground, cliques, mayLeave);
  }

  /** Speaks of plans that leave out fewer bundles, or more, from now on. */
  public void mayLeave(int bundles) {
    if (bundles == mayLeave) {
      return;
    }
    provenMs = bundles < mayLeave ? provenMs : 0;
    mayLeave = bundles;
    relaxation = new Relaxation(ground, cliques, openings, moments, mayLeave);
    known = new KnownSets(ground, cliques, mayLeave);
    answer = answer == null ? null : relaxation.answer(answer.prices, answer.gainMs);
  }

  /** No plan that leaves out no more than it may costs less than this, person-milliseconds. */
  public long provenMs() {
    return provenMs;
  }

  /**
   * Gathers the sets of bundles that a plan cheaper than a known one can have, for mending and
   * closing; until the bound is raised again. Only for plans that leave out no bundle.
   *
   * @param costMs of the known plan
   * @param mostSteps sets to look at; those that came up so far have to do if they do not last.
   *     Half as many more raise the bound of those that were gathered
   * @param stopped ends the work early
   */
  public void gather(long costMs, long mostSteps, BooleanSupplier stopped) {
    if (mayLeave > 0 || (pool != null && pool.costMs == costMs)) {
      return;
    }
    pool = gathered(costMs, mostSteps);
    if (pool.complete) {
      pool = new Strengthening(ground, cliques, pool).run(mostSteps / 2, stopped);
      provenMs = Math.max(provenMs, Math.min(costMs, pool.boundMs));
    }
  }

  /**
   * Those that are known have to do where there are too many, and at the same prices ever after.
   */
  private Pool gathered(long costMs, long mostSteps) {
    Answer at = begun();
    Optional<Pool> few =
        tooMany == at
            ? Optional.empty()
            : new Gathering(ground, relaxation, at).run(costMs, mostSteps);
    tooMany = few.isEmpty() ? at : null;
    return few.orElseGet(
        () -> Pool.of(ground, at, costMs, known.columns(at, costMs - at.valueMs), false));
  }

  /**
   * Looks at plans that could be cheaper than a known one, until the steps are spent or all were
   * looked at; then the bound is what the cheapest of them costs. Only for plans that leave out no
   * bundle, and of sets that were gathered.
   *
   * @param costMs of the known plan
   * @param stopped ends the work early
   * @param judge told of cheaper plans
   */
  public void close(long costMs, long mostSteps, BooleanSupplier stopped, Judge judge) {
    if (mayLeave > 0 || pool == null) {
      return;
    }
    Closing closing = new Closing(ground, cliques, moments, pool, Closing.FEW, costMs, judge);
    closing.run(mostSteps, stopped);
    provenMs = Math.max(provenMs, closing.provenMs());
  }

  /**
   * Makes a plan that leaves out no bundle cheaper, out of the sets that were gathered.
   *
   * @param spotOf the spot of each bundle
   * @param costMs of that plan
   * @param stopped ends the work early
   * @param judge told of cheaper plans, each cheaper than the ones before
   * @return what the plan costs then
   */
  public long mend(
      int[] spotOf, long costMs, long mostSteps, BooleanSupplier stopped, Judge judge) {
    return mayLeave > 0 || pool == null || pool.columns.isEmpty() || isFew(pool)
        ? costMs
        : new Mending(ground, moments, pool, spotOf, costMs, judge).run(mostSteps, stopped);
  }

  /** Whether closing looks at all plans of it at once. */
  private static boolean isFew(Pool sets) {
    return sets.complete && sets.columns.size() <= Closing.FEW;
  }

  /**
   * Raises the bound.
   *
   * @param aimMs the cost of some plan
   * @param mostSteps sets of bundles to look at; a few more may be
   * @param stopped ends the work early
   */
  public void raise(long aimMs, long mostSteps, BooleanSupplier stopped) {
    AscentBySets ascent = new AscentBySets(relaxation, known, begun());
    ascent.run(aimMs, mostSteps, stopped);
    answer = ascent.best();
    pool = null;
    provenMs = Math.max(provenMs, answer.valueMs);
  }

  /** What is answered at the prices of the bound so far, or at those to begin with. */
  private Answer begun() {
    if (answer == null) {
      answer = relaxation.ask(relaxation.start(openings), Relaxation.FOR_A_SPOT);
    }
    return answer;
  }
}
