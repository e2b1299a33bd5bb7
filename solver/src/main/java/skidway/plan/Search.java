package skidway.plan;

/**
 * How a plan was searched for; the same inputs, seed and calculations give the same plan.
 *
 * @param calculations score calculations spent at most
 * @param until the share above the best possible that was good enough; 0 if none was
 * @param stopped whether somebody stopped it early (then it is not repeatable)
 */
public record Search(long seed, long calculations, double until, boolean stopped) {
  /** A search that spent all its calculations, unless somebody stopped it. */
  public Search(long seed, long calculations, boolean stopped) {
    this(seed, calculations, 0, stopped);
  }
}
