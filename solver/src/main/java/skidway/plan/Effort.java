package skidway.plan;

import java.util.OptionalDouble;

/**
 * Crew time by kind, person-seconds.
 *
 * @param pickS lost at picking pieces too low or too high up
 * @param rehandleS moving pieces aside for what lies in a bundle beneath theirs, and standing
 *     pieces up in racks
 * @param insideS moving pieces aside inside their bundles, for what lies in a lower layer; empty in
 *     plans from before that was counted
 * @param setDownS lifting on what was set down because something beneath comes off later
 * @param moveS moving bundles that lay there when the plan began, and changing their tags
 * @param offTruckS where no machine unloads: carrying timbers off the trucks to their spots, laying
 *     them there and walking back
 */
public record Effort(
    double carryS,
    double pickS,
    double rehandleS,
    OptionalDouble insideS,
    double setDownS,
    double machineS,
    double moveS,
    double offTruckS) {
  public static final Effort NONE = new Effort(0, 0, 0, 0, 0);

  /** Crew time of a plan that begins on an empty site, and moves nothing aside inside bundles. */
  public Effort(double carryS, double pickS, double rehandleS, double setDownS, double machineS) {
    this(carryS, pickS, rehandleS, setDownS, machineS, 0);
  }

  /** Crew time where a machine unloads and nothing is moved aside inside bundles. */
  public Effort(
      double carryS,
      double pickS,
      double rehandleS,
      double setDownS,
      double machineS,
      double moveS) {
    this(carryS, pickS, rehandleS, OptionalDouble.of(0), setDownS, machineS, moveS, 0);
  }

  /** The same with so much of moving pieces aside inside their bundles. */
  public Effort withInside(double newInsideS) {
    return new Effort(
        carryS,
        pickS,
        rehandleS,
        OptionalDouble.of(newInsideS),
        setDownS,
        machineS,
        moveS,
        offTruckS);
  }

  /** The same with so much of unloading by hand. */
  public Effort withOffTruck(double newOffTruckS) {
    return new Effort(carryS, pickS, rehandleS, insideS, setDownS, machineS, moveS, newOffTruckS);
  }

  public double totalS() {
    return carryS + pickS + rehandleS + insideS.orElse(0) + setDownS + machineS + moveS + offTruckS;
  }

  /** The sum; what one of them does not count, it does not count either. */
  public Effort plus(Effort other) {
    boolean both = insideS.isPresent() && other.insideS.isPresent();
    return new Effort(
        carryS + other.carryS,
        pickS + other.pickS,
        rehandleS + other.rehandleS,
        both
            ? OptionalDouble.of(insideS.orElse(0) + other.insideS.orElse(0))
            : OptionalDouble.empty(),
        setDownS + other.setDownS,
        machineS + other.machineS,
        moveS + other.moveS,
        offTruckS + other.offTruckS);
  }
}
