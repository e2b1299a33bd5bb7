package skidway.plan;

/**
 * Crew time by kind, person-seconds.
 *
 * @param pickS lost at picking pieces too low or too high up
 * @param setDownS lifting on what was set down because something beneath comes off later
 * @param moveS moving bundles that lay there when the plan began, and changing their tags
 * @param offTruckS where no machine unloads: carrying timbers off the trucks to their spots, laying
 *     them there and walking back
 */
public record Effort(
    double carryS,
    double pickS,
    double rehandleS,
    double setDownS,
    double machineS,
    double moveS,
    double offTruckS) {
  public static final Effort NONE = new Effort(0, 0, 0, 0, 0);

  /** Crew time where a machine unloads. */
  public Effort(
      double carryS,
      double pickS,
      double rehandleS,
      double setDownS,
      double machineS,
      double moveS) {
    this(carryS, pickS, rehandleS, setDownS, machineS, moveS, 0);
  }

  /** Crew time of a plan that begins on an empty site. */
  public Effort(double carryS, double pickS, double rehandleS, double setDownS, double machineS) {
    this(carryS, pickS, rehandleS, setDownS, machineS, 0);
  }

  public double totalS() {
    return carryS + pickS + rehandleS + setDownS + machineS + moveS + offTruckS;
  }

  public Effort plus(Effort other) {
    return new Effort(
        carryS + other.carryS,
        pickS + other.pickS,
        rehandleS + other.rehandleS,
        setDownS + other.setDownS,
        machineS + other.machineS,
        moveS + other.moveS,
        offTruckS + other.offTruckS);
  }
}
