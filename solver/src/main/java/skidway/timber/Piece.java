package skidway.timber;

import java.util.OptionalDouble;

/**
 * One cut timber and its place in the building.
 *
 * @param mark what is written on it; unique in a delivery
 * @param course 1 is the lowest
 * @param position 1 is the leftmost seen from outside
 * @param fromLeftM distance of its left end from the wall's start, when the packing list has it
 * @param weighedKg its weight, when somebody weighed it
 */
public record Piece(
    String mark,
    String wallId,
    int course,
    int position,
    OptionalDouble fromLeftM,
    double lengthM,
    Section section,
    Species species,
    Moisture moisture,
    OptionalDouble weighedKg) {

  /** The weighed mass, or else the range computed from size, species and moisture. */
  public MassRange mass() {
    if (weighedKg.isPresent()) {
      return MassRange.weighed(weighedKg.getAsDouble());
    }
    return WoodDensity.range(species, moisture).times(section.areaM2() * lengthM);
  }
}
