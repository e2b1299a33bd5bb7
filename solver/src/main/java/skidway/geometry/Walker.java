package skidway.geometry;

/**
 * What walking depends on besides the site.
 *
 * @param stepOverM walls and deck edges higher than this are walked round
 * @param climbFactor metres of level walk that one metre of climb counts for
 */
public record Walker(double stepOverM, double climbFactor) {}
