package skidway.audit.floor;

import skidway.site.Point;

/**
 * What one bearer or rail puts on a floor, evenly from one of its ends to the other.
 *
 * @param spotId where the stack stands whose bearer it is
 */
public record LineLoad(String spotId, Point from, Point to, double newtons) {}
