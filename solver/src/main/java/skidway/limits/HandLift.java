package skidway.limits;

/**
 * One end of a lift by hand, as the lifting equation asks for it. Lengths are centimetres in its
 * metric form and inches in its US form.
 *
 * @param reach H: from the middle between the ankles to the hands
 * @param height V: of the hands above the floor, at the end that is looked at
 * @param pickHeight V where the lift begins; the same as height when that is the end looked at
 * @param travel D: how far the hands go up or down
 * @param twistDeg A: how far the load is to the side
 * @param liftsPerMin F: over a quarter of an hour
 */
public record HandLift(
    double reach,
    double height,
    double pickHeight,
    double travel,
    double twistDeg,
    double liftsPerMin,
    LiftDuration duration,
    Coupling coupling) {}
