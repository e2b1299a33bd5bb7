package skidway.layout;

import skidway.rules.Rule;

/**
 * A placement rule that a spot breaks.
 *
 * @param against what the spot comes too near to, such as {@code lane main}
 * @param valueM the distance there is; negative says how far the two overlap or one reaches out
 * @param limitM the least distance allowed
 */
public record Breach(Rule rule, String spotId, String against, double valueM, double limitM) {}
