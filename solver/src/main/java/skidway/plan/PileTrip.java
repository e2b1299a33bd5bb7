package skidway.plan;

import java.util.List;

/**
 * One trip of the machine from a bundle to a pile.
 *
 * @param marks of the pieces it brings
 * @param pickStandId where the machine stands to pick the load up
 * @param standId where it stands to put it down
 * @param reachM of the end at which it reaches farther
 * @param massKg what the load weighs at most, without rigging
 * @param capacityKg what the machine lifts of it at that reach
 */
public record PileTrip(
    String bundleId,
    String fromSpotId,
    String pileId,
    List<String> marks,
    String pickStandId,
    String standId,
    double reachM,
    double massKg,
    double capacityKg) {
  public PileTrip {
    marks = List.copyOf(marks);
  }
}
