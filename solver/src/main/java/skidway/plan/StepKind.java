package skidway.plan;

/** What the machine does with one bundle in one step. */
public enum StepKind {
  /** Off the truck, onto its stack. */
  PLACE,
  /** Off the truck, down at a waiting place, because what belongs under it comes off later. */
  SET_DOWN,
  /** From the waiting place onto its stack. */
  LIFT_ON,
  /** From where it lay when the plan began onto another stack. */
  MOVE,
  /** From where it lay when the plan began to a waiting place, to get at what is beneath it. */
  SET_ASIDE;

  /** Whether the bundle comes off a truck. */
  public boolean offTruck() {
    return this == PLACE || this == SET_DOWN;
  }

  /** Whether the bundle goes to a waiting place. */
  public boolean waits() {
    return this == SET_DOWN || this == SET_ASIDE;
  }
}
