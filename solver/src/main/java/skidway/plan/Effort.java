package skidway.plan;

/**
 * Crew time by kind, person-seconds.
 *
 * @param pickS lost at picking pieces too low or too high up
 */
public record Effort(
    double carryS, double pickS, double rehandleS, double setDownS, double machineS) {
  public static final Effort NONE = new Effort(0, 0, 0, 0, 0);

  public double totalS() {
    return carryS + pickS + rehandleS + setDownS + machineS;
  }

  public Effort plus(Effort other) {
    return new Effort(
        carryS + other.carryS,
        pickS + other.pickS,
        rehandleS + other.rehandleS,
        setDownS + other.setDownS,
        machineS + other.machineS);
  }
}
