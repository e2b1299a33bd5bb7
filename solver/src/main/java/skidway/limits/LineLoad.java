package skidway.limits;

import skidway.site.Point;

/**
 * A straight line on which a stack bears, evenly along it: a bearer, the rail of a rack.
 *
 * @param share part of the stack's weight, 0 to 1
 */
public record LineLoad(Point from, Point to, double share) {}
