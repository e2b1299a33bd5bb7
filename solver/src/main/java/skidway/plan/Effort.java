package skidway.plan;

/** Crew time by kind, person-seconds. */
public record Effort(double carryS, double rehandleS, double setDownS, double machineS) {
  public static final Effort NONE = new Effort(0, 0, 0, 0);

  public double totalS() {
    return carryS + rehandleS + setDownS + machineS;
  }

  public Effort plus(Effort other) {
    return new Effort(
        carryS + other.carryS,
        rehandleS + other.rehandleS,
        setDownS + other.setDownS,
        machineS + other.machineS);
  }
}
