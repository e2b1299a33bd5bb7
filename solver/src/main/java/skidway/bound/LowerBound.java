package skidway.bound;

import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * What every plan costs at least. Starts low and is raised step by step; stopped at any time it
 * holds. The same ground, aims and steps give the same bound on any machine.
 */
public final class LowerBound {
  /** From so many bundles on the way to good prices is long. */
  private static final int MANY = 60;

  private final Ground ground;
  private final int moments;
  private final Cliques cliques;
  private final Openings openings;
  private Prices prices;
  private int mayLeave;
  private @Nullable Pool pool;
  private long provenMs;
  private long steps;

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
    this.prices = relaxation().start(openings);
  }

  private Relaxation relaxation() {
    return new Relaxation(ground, cliques, openings, moments, mayLeave);
  }

  /** Speaks of plans that leave out fewer bundles, or more, from now on. */
  public void mayLeave(int bundles) {
    provenMs = bundles <= mayLeave ? provenMs : 0;
    mayLeave = bundles;
  }

  /** No plan that leaves out no more than it may costs less than this, person-milliseconds. */
  public long provenMs() {
    return provenMs;
  }

  /** How many sets of bundles were looked at so far. */
  public long steps() {
    return steps;
  }

  /**
   * Gathers the sets of bundles that a plan cheaper than a known one can have, for mending and
   * closing; until the bound is raised again. Only for plans that leave out no bundle.
   *
   * @param costMs of the known plan
   * @param mostSteps sets to look at; none are gathered if they do not last. Half as many more
   *     raise the bound of those that were gathered
   * @param stopped ends the work early
   */
  public void gather(long costMs, long mostSteps, BooleanSupplier stopped) {
    if (mayLeave > 0 || (pool != null && pool.costMs == costMs)) {
      return;
    }
    Relaxation relaxation = relaxation();
    pool = Pool.of(ground, relaxation, prices, costMs, mostSteps);
    steps += relaxation.steps();
    if (pool.complete) {
      Strengthening strengthening = new Strengthening(ground, cliques, pool);
      pool = strengthening.run(mostSteps / 2, stopped);
      provenMs = Math.max(provenMs, Math.min(costMs, pool.boundMs));
      steps += strengthening.steps();
    }
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
    steps += closing.steps();
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
    Relaxation relaxation = relaxation();
    DualAscent.Pace pace = ground.bundles() < MANY ? DualAscent.BRISK : DualAscent.EAGER;
    DualAscent ascent = new DualAscent(relaxation, prices, pace);
    ascent.run(aimMs, mostSteps, stopped);
    prices = ascent.best();
    pool = null;
    provenMs = Math.max(provenMs, ascent.bestMs());
    steps += relaxation.steps();
  }
}
