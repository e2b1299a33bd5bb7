package skidway.audit.walk;

/**
 * Steps between two cells.
 *
 * @param length the walk they count for, in the unit of {@link Moves}
 */
record Climb(int foot, int top, int length) {}
