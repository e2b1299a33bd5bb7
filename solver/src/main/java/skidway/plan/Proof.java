package skidway.plan;

import java.util.List;

/**
 * How near a plan is to the best possible: no plan that leaves out as few bundles takes less crew
 * time than this. Time is counted without drives to places where bundles wait.
 *
 * @param lowestPersonS no legal plan takes less, person-seconds
 * @param countedPersonS what this plan takes, counted in the same way
 * @param ignored what no plan was held to when the lowest was worked out: the best possible may
 *     take more than that, never less
 */
public record Proof(double lowestPersonS, double countedPersonS, List<Ignored> ignored) {
  /** Rules that only some plans keep; leaving one out makes a lower bound lower. */
  public enum Ignored {
    PATHS("paths that stacks shut together"),
    WAITING("room for bundles to wait in"),
    DRIVES("drives to where bundles wait"),
    SHARED_LIMITS("limits that stacks share"),
    EXCLUSIONS("spots that are in each other's way");

    private final String words;

    Ignored(String words) {
      this.words = words;
    }

    /** As in "does not heed paths that stacks shut together". */
    public String words() {
      return words;
    }
  }

  public Proof {
    ignored = List.copyOf(ignored);
    if (!(lowestPersonS > 0 && countedPersonS >= lowestPersonS)) {
      throw new IllegalArgumentException(
          "A plan takes no less than the lowest: " + countedPersonS + " and " + lowestPersonS);
    }
  }

  /** By what share of the best possible the plan may be above it; 0 if it is the best. */
  public double share() {
    return countedPersonS / lowestPersonS - 1;
  }

  /** Whether no plan takes less. */
  public boolean isBest() {
    return countedPersonS == lowestPersonS;
  }
}
