package skidway.site;

/**
 * A point from which the machine lifts.
 *
 * @param laneId the lane on which it gets there with its load, or an empty text
 */
public record MachineStand(String id, Point at, String laneId) {
  /** A stand reached over open ground. */
  public MachineStand(String id, Point at) {
    this(id, at, "");
  }
}
