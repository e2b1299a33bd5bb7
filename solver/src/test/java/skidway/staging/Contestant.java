package skidway.staging;

/** A way to improve a first staging within a time; all start from the same one. */
interface Contestant {
  String name();

  /**
   * The spot of each bundle.
   *
   * @param start a staging that keeps the rules
   * @param processorS seconds of processor time it may take, all its threads together
   */
  int[] improve(Board board, int[] start, long seed, double processorS);
}
