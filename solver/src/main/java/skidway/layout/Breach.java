package skidway.layout;

import skidway.rules.Rule;

/**
 * A placement rule that a spot breaks.
 *
 * @param against what the spot comes too near to, such as {@code lane main}
 * @param value in the rule's measure: the distance there is, where negative says how far the two
 *     overlap or one reaches out; or the slope
 * @param limit the least distance allowed, or the steepest slope
 */
public record Breach(Rule rule, String spotId, String against, double value, double limit) {}
