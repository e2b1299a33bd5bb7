package skidway.staging;

/** Watches a search. */
public interface Watcher {
  /**
   * Told of every better plan: bundles placed and person-seconds, set-down drives not yet counted.
   */
  void better(int placed, int delivered, double personS);
}
