package skidway.bound;

/**
 * What a lower bound has to know of a staging problem: bundles and spots by number, what a bundle
 * costs on a spot and what a set of bundles costs in one stack, person-milliseconds. All of it must
 * stay as it is while a bound is worked on.
 */
public interface Ground {
  /** What something costs that a rule forbids. */
  long REFUSED = -1;

  /** What a stack adds to sums that no plan may bring above 1, per kilogram. */
  final class Load {
    /** Numbers of the sums. */
    final int[] sums;

    final double[] perKg;

    /** In step: the numbers of the sums and what a kilogram adds to each. */
    public Load(int[] sums, double[] perKg) {
      this.sums = sums.clone();
      this.perKg = perKg.clone();
    }
  }

  /** How many bundles there are. */
  int bundles();

  /** How many spots there are. */
  int spots();

  /** The moments at which a bundle is on site, a bit each. */
  long there(int bundle);

  /** What a bundle costs on a spot before anything is stacked, or {@link #REFUSED}. */
  long placeMs(int bundle, int spot);

  /** Spots that may not be used at the same moment as a spot. */
  int[] excludes(int spot);

  /** No more than a bundle's own share of what any stack costs that it is part of. */
  long leastInStackMs(int bundle, int spot);

  /** How many sums stacks share that no plan brings above 1. */
  int sums();

  /** What a stack on a spot adds to them when this bundle is its lowest. */
  Load load(int spot, int lowest);

  /** A number below {@link #bundles} that bundles with the same {@link #load} everywhere share. */
  int sizeOf(int bundle);

  double massKg(int bundle);

  /** The lowest bundle of the cheapest order of a set that is legal on a spot. */
  int lowest(int[] set, int size, int spot);

  /** Room on a spot that the bundles of every legal set share; infinite where none is known. */
  double room(int spot);

  /** Room that a bundle takes. */
  double takes(int bundle, int spot);

  /**
   * No more than what a bundle adds to the cost of any stack in which another is somewhere beneath
   * it, beyond {@link #leastInStackMs} of all; {@link #REFUSED} if no legal stack has it there. A
   * bundle adds that once, for the dearest of those beneath it.
   */
  long onTopMs(int beneath, int bundle, int spot);

  /** Whether a set of bundles, or one that contains it, may be legal on a spot. */
  boolean mayGrow(int[] set, int size, int spot);

  /**
   * What stacking a set of bundles costs, or {@link #REFUSED}: never less than the sum of {@link
   * #leastInStackMs} and what they add in the cheapest order by {@link #onTopMs}.
   *
   * @param set growing; its first {@code size} count
   */
  long stackMs(int[] set, int size, int spot);
}
