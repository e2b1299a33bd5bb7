package skidway.staging;

/**
 * How long and with which dice a search runs.
 *
 * @param calculations score calculations of the main run; repairs after a shut path add a share of
 *     it
 */
public record SearchLimits(long seed, long calculations) {
  public static final SearchLimits DEFAULT = new SearchLimits(1, 1_000_000);
}
