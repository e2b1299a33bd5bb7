package skidway.plan;

/** What the machine does with one bundle in one step. */
public enum StepKind {
  /** Off the truck, onto its stack. */
  PLACE,
  /** Off the truck, down at a waiting place, because what belongs under it comes off later. */
  SET_DOWN,
  /** From the waiting place onto its stack. */
  LIFT_ON
}
