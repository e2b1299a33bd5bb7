package skidway.rules;

/** How much a broken rule weighs. */
public enum Level {
  /** Physics, safety, published limits: a plan that breaks it must not be carried out. */
  HARD,
  /** A bundle without a spot: the plan is incomplete. */
  MEDIUM,
  /** Crew time. */
  SOFT,
  /** What no plan can settle and people must: flagged, with a way out. */
  NOTE
}
