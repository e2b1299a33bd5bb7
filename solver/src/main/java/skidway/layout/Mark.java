package skidway.layout;

/**
 * Where the lower end of a spot may lie on one axis.
 *
 * @param rank 0 for the plain pattern from the zone's edge, then less and less usual ones
 */
record Mark(double atM, int rank) {
  /** The plain pattern, started at the zone's lower edge. */
  static final int PATTERN = 0;

  /** The pattern started at other edges of the zone. */
  static final int SHIFTED = 1;

  /** Snug against an obstacle, beside a spot of another size, open to the other side. */
  static final int SNUG = 2;

  /** In between, to fill what edges do not explain. */
  static final int FILL = 3;

  static final int LAST_RANK = FILL;
}
