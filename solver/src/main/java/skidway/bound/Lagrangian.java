package skidway.bound;

/** A problem whose hard rules are not kept but priced: below every plan, whatever the prices. */
interface Lagrangian {
  /**
   * The lower bound at some prices, person-milliseconds.
   *
   * @param off filled with how often each bundle was not taken as it should be (1 never, -1 twice),
   *     and by how much each group and sum was used beyond 1
   */
  long valueMs(Prices prices, double[] off);
}
