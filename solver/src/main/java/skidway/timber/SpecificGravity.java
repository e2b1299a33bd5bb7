package skidway.timber;

/** Oven-dry mass over a volume, relative to water, with the basis of that volume. */
public record SpecificGravity(double value, GravityBasis basis) {
  public static SpecificGravity basic(double value) {
    return new SpecificGravity(value, GravityBasis.GREEN_VOLUME);
  }
}
