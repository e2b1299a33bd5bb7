package skidway.plan;

/** How a piece gets from its bundle to a pile by the wall. */
public enum Way {
  /** People carry it. */
  BY_HAND,
  /** People lay it onto a load, the machine brings the load. */
  BY_MACHINE
}
