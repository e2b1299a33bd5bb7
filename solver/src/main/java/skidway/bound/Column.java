package skidway.bound;

/**
 * A set of bundles on a spot.
 *
 * @param bundles a bit each
 * @param moments at which something of it is there, a bit each
 * @param costMs of placing and stacking it
 * @param excessMs how much a plan that has it is above the bound at least
 */
record Column(int spot, long bundles, long moments, long costMs, long excessMs) {}
