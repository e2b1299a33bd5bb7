package skidway.plan;

import skidway.rules.Rule;

/** A bundle without a spot, the rule that binds and what that means here. */
public record Unplaced(String bundleId, Rule rule, String sentence) {}
