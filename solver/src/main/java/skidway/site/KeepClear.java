package skidway.site;

import java.util.OptionalDouble;

/**
 * A place nothing is put down on: a trench, a tree, a door swing.
 *
 * @param marginM how far stacks stay away from the outline
 * @param walkable whether people may walk over it (not over a trench or through a tree)
 * @param excavation whether it is an open trench or pit, whose edge must not be loaded
 * @param depthM how deep it is dug, when somebody measured it
 */
public record KeepClear(
    String id,
    Outline outline,
    double marginM,
    String reason,
    boolean walkable,
    boolean excavation,
    OptionalDouble depthM) {
  /** Anything but an excavation. */
  public KeepClear(String id, Outline outline, double marginM, String reason, boolean walkable) {
    this(id, outline, marginM, reason, walkable, false, OptionalDouble.empty());
  }
}
