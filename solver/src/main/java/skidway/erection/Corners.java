package skidway.erection;

/** How walls are joined where they meet. */
public enum Corners {
  /** Timbers of crossing walls lie on each other in turns, so neither wall can run ahead. */
  INTERLOCKED,
  /** Walls are joined afterwards, by a post or a spline; each goes up by itself. */
  APART
}
