package skidway.timber;

import java.util.OptionalDouble;

/**
 * One cut timber and its place in the building.
 *
 * @param mark what is written on it; unique in a delivery
 * @param course 1 is the lowest
 * @param position 1 is the leftmost seen from outside
 * @param fromLeftM distance of its left end from the wall's start, when the packing list has it
 * @param moisturePct water over oven-dry wood by mass, percent
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
    double moisturePct,
    OptionalDouble weighedKg) {

  /** The weighed mass, or else the one computed from size, species and moisture. */
  public double massKg() {
    return weighedKg.orElseGet(
        () -> section.areaM2() * lengthM * WoodDensity.kgPerM3(species, moisturePct));
  }
}
