package skidway.plan;

/**
 * Crew time piece by piece, person-seconds.
 *
 * @param bringS carrying pieces from their bundles to piles and walking back
 * @param layS laying them onto loads and piles with their bearers, standing them up in racks
 * @param carryS carrying pieces to their places on the walls and walking back
 * @param pickS lost at picking pieces too low or too high up
 * @param asideS moving pieces aside, in stacks and inside bundles
 * @param machineS the machine's lifts: off the trucks, set-downs, moves, and trips to piles;
 *     without a machine, carrying timbers off the trucks by hand
 */
public record PieceHours(
    double bringS, double layS, double carryS, double pickS, double asideS, double machineS) {
  public static final PieceHours NONE = new PieceHours(0, 0, 0, 0, 0, 0);

  public double totalS() {
    return bringS + layS + carryS + pickS + asideS + machineS;
  }

  public PieceHours plus(PieceHours other) {
    return new PieceHours(
        bringS + other.bringS,
        layS + other.layS,
        carryS + other.carryS,
        pickS + other.pickS,
        asideS + other.asideS,
        machineS + other.machineS);
  }
}
