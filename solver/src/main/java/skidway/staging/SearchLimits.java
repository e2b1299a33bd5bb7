package skidway.staging;

/**
 * How long and with which dice a search runs.
 *
 * @param calculations score calculations of the main run; repairs after a shut path add a share of
 *     it
 * @param until a plan proven to be above the best possible by no more than this share is good
 *     enough; 0 if only the best is
 */
public record SearchLimits(long seed, long calculations, double until) {
  public static final SearchLimits DEFAULT = new SearchLimits(1, 400_000);

  /** Limits of a search that spends all its calculations. */
  public SearchLimits(long seed, long calculations) {
    this(seed, calculations, 0);
  }
}
