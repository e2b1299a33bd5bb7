package skidway.plan;

import java.util.List;

/**
 * How the bundles of a plan are used up piece by piece: which pieces are brought to piles by the
 * walls, in which wave. All others are pulled straight from their bundles when their turn comes.
 *
 * @param revision of the plan
 * @param plan fingerprint of the plan's file
 * @param straight hours if every piece were pulled straight from its bundle
 * @param hours with the waves, all bundles' unloading included
 */
public record WavePlan(
    String jobName,
    int revision,
    String plan,
    List<Wave> waves,
    PieceHours straight,
    PieceHours hours) {
  public WavePlan {
    waves = List.copyOf(waves);
  }

  /** The same of the plan with this fingerprint. */
  public WavePlan of(String fingerprint) {
    return new WavePlan(jobName, revision, fingerprint, waves, straight, hours);
  }
}
