package skidway.plan;

import skidway.timber.BearerRow;

/**
 * One lift of the unloading sheet; or one bundle that people carry timber by timber, from its top
 * layer down.
 *
 * @param number 1 is first
 * @param fromId load it is taken from, waiting place when it is lifted on, or spot when it lay
 *     there
 * @param toId spot or waiting place it is put down at
 * @param tier level it gets there, 1 = bottom; 0 in a rack
 * @param standId where the machine stands; an empty text if people carry the timbers
 * @param reachM horizontal distance from the stand to the middle of the place; of the farther end
 *     when lifted on
 * @param massKg what it weighs at most, without rigging
 * @param capacityKg what the machine lifts of it at that reach
 * @param pickStandId where the machine stands to pick it up, when that is another stand than where
 *     it puts it down; else an empty text
 * @param bearers laid beneath it before it comes down
 */
public record Step(
    int number,
    StepKind kind,
    String bundleId,
    String fromId,
    String toId,
    int tier,
    String standId,
    double reachM,
    double massKg,
    double capacityKg,
    BearerRow bearers,
    String pickStandId) {
  /** Whether people carry the bundle's timbers; then there is neither reach nor capacity. */
  public boolean byHand() {
    return standId.isEmpty();
  }

  /** A lift without another stand to pick up from. */
  public Step(
      int number,
      StepKind kind,
      String bundleId,
      String fromId,
      String toId,
      int tier,
      String standId,
      double reachM,
      double massKg,
      double capacityKg,
      BearerRow bearers) {
    this(
        number,
        kind,
        bundleId,
        fromId,
        toId,
        tier,
        standId,
        reachM,
        massKg,
        capacityKg,
        bearers,
        "");
  }
}
