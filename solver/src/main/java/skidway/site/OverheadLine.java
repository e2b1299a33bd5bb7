package skidway.site;

import java.util.OptionalDouble;

/**
 * A straight stretch of an overhead power line, seen from above.
 *
 * @param volts nominal alternating voltage
 * @param clearanceM distance that its owner asks for, when he said one
 */
public record OverheadLine(
    String id, Point from, Point to, double volts, OptionalDouble clearanceM) {}
