package skidway.limits;

/**
 * How many people carry a piece. A plain share per person; working in a team takes away from what
 * each can lift, and no figure here is a safe limit for a given person.
 */
public final class TeamLift {
  private TeamLift() {}

  /** People needed for a mass when each takes at most a share of it; at least one. */
  public static int people(double massKg, double perPersonKg) {
    return Math.max(1, (int) Math.ceil(massKg / perPersonKg - 1e-9));
  }
}
