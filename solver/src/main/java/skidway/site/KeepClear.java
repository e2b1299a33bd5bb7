package skidway.site;

/**
 * A place nothing is put down on: a trench, a tree, a door swing.
 *
 * @param marginM how far stacks stay away from the outline
 * @param walkable whether people may walk over it (not over a trench or through a tree)
 */
public record KeepClear(
    String id, Outline outline, double marginM, String reason, boolean walkable) {}
