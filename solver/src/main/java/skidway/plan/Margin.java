package skidway.plan;

import skidway.rules.Rule;

/**
 * How near a plan comes to a limit.
 *
 * @param where the stack, bundle or step it is about
 * @param value what the plan has, in the rule's SI unit
 * @param limit what is allowed
 * @param atLeast whether the limit is a least value (a distance) and not a most (a load)
 */
public record Margin(Rule rule, String where, double value, double limit, boolean atLeast) {
  /** Share of the limit still free; negative when it is broken. */
  public double share() {
    if (limit == 0) {
      return atLeast ? value : -value;
    }
    return (atLeast ? value - limit : limit - value) / limit;
  }
}
