package skidway.bound;

import java.util.function.BooleanSupplier;

/**
 * What every plan costs at least. Starts low and is raised step by step; stopped at any time it
 * holds. The same ground, aims and steps give the same bound on any machine.
 */
public final class LowerBound {
  private final Ground ground;
  private final int moments;
  private final Cliques cliques;
  private final Openings openings;
  private Prices prices;
  private int mayLeave;
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
   * Looks at every plan that could be cheaper than a known one, if that are not too many; then the
   * bound is what the cheapest of them costs. Only for plans that leave out no bundle.
   *
   * @param costMs of the known plan
   * @param judge told of cheaper plans
   */
  public void close(long costMs, long mostSteps, Judge judge) {
    if (mayLeave > 0) {
      return;
    }
    Closing closing = new Closing(ground, cliques, moments, pool(costMs), prices, costMs, judge);
    closing.run(mostSteps);
    provenMs = Math.max(provenMs, closing.provenMs());
    steps += closing.steps();
  }

  /**
   * Makes a plan that leaves out no bundle cheaper with what is known from the bound.
   *
   * @param spotOf the spot of each bundle
   * @param costMs of that plan
   * @param judge told of cheaper plans, each cheaper than the ones before
   * @return what the plan costs then
   */
  public long mend(int[] spotOf, long costMs, long mostSteps, Judge judge) {
    return mayLeave > 0
        ? costMs
        : new Mending(ground, moments, pool(costMs), spotOf, costMs, judge).run(mostSteps);
  }

  private Pool pool(long costMs) {
    Relaxation relaxation = relaxation();
    Pool pool = Pool.of(ground, relaxation, prices, costMs);
    steps += relaxation.steps();
    return pool;
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
    DualAscent ascent = new DualAscent(relaxation, prices);
    ascent.run(aimMs, mostSteps, stopped);
    prices = ascent.best();
    provenMs = Math.max(provenMs, ascent.bestMs());
    steps += relaxation.steps();
  }
}
