package skidway.timber;

import java.util.OptionalDouble;

/**
 * A wood species as far as its mass goes.
 *
 * @param name common name in lower case, as written in a packing list
 * @param basicSpecificGravity oven-dry mass over green volume, relative to water
 * @param volumetricShrinkagePct shrinkage from green to oven-dry, percent, where the handbook has
 *     it
 */
public record Species(
    String name, double basicSpecificGravity, OptionalDouble volumetricShrinkagePct) {}
