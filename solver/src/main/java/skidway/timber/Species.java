package skidway.timber;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A wood species as far as its mass goes.
 *
 * @param name common name in lower case, as written in a packing list
 * @param volumetricShrinkagePct shrinkage from green to oven-dry, percent, where the handbook has
 *     it
 * @param green moisture of freshly felled wood: heartwood, tree average, sapwood; where it was read
 * @param spreadShare how far single lots lie from the gravity, as a share of it, each way
 */
public record Species(
    String name,
    SpecificGravity gravity,
    OptionalDouble volumetricShrinkagePct,
    Optional<Moisture> green,
    double spreadShare) {
  /** A species of known basic gravity that lies exactly on it, its green moisture unknown. */
  public Species(String name, double basicSpecificGravity, OptionalDouble volumetricShrinkagePct) {
    this(
        name,
        SpecificGravity.basic(basicSpecificGravity),
        volumetricShrinkagePct,
        Optional.empty(),
        0);
  }
}
