package skidway.limits;

/**
 * How well hands get hold of a load: NIOSH 94-110 (rev. 9/2021) Table 7, pp. 16-18. A load longer
 * than 16 in or that needs gloves is held poorly.
 */
public enum Coupling {
  GOOD(1.00, 1.00),
  FAIR(0.95, 1.00),
  POOR(0.90, 0.90);

  private final double low;
  private final double high;

  Coupling(double low, double high) {
    this.low = low;
    this.high = high;
  }

  /**
   * The coupling multiplier CM.
   *
   * @param lowDown whether the hands are below 75 cm (30 in)
   */
  public double multiplier(boolean lowDown) {
    return lowDown ? low : high;
  }
}
