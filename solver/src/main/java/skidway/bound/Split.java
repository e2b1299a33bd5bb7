package skidway.bound;

import java.util.Optional;

/**
 * Two parts of a problem: a bundle lies on one of the spots up to some number, or on a later one.
 *
 * @param last the last spot of the first part
 */
record Split(int bundle, int last) {
  /** Sets count for so much beside being taken, so that every split has two sides. */
  private static final double FAINT = 1e-3;

  /**
   * The split that parts evenly what a bound could not decide.
   *
   * @param sets of the part, by spot
   * @param taken how often each of them was taken while the part's bound was raised
   * @param kept the sets that are left of it
   * @return nothing if every bundle has one spot left
   */
  static Optional<Split> of(Ground ground, Pool pool, int[] sets, int[] taken, int[] kept) {
    double[][] weights = new double[ground.bundles()][ground.spots()];
    for (int c : kept) {
      Column column = pool.columns.get(c);
      for (int b : column.set) {
        weights[b][column.spot] += FAINT;
      }
    }
    for (int i = 0; i < sets.length; i++) {
      Column column = pool.columns.get(sets[i]);
      for (int b : column.set) {
        weights[b][column.spot] += weights[b][column.spot] > 0 ? taken[i] : 0;
      }
    }
    Split best = null;
    double most = 0;
    for (int b = 0; b < weights.length; b++) {
      double all = 0;
      for (double weight : weights[b]) {
        all += weight;
      }
      double up = 0;
      for (int s = 0; s < weights[b].length; s++) {
        up += weights[b][s];
        double lesser = Math.min(up, all - up);
        if (lesser > most && weights[b][s] > 0 && lesser > FAINT / 2) {
          most = lesser;
          best = new Split(b, s);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  boolean mayBeFirst(Column column) {
    return column.spot <= last || !column.holds(bundle);
  }

  boolean mayBeSecond(Column column) {
    return column.spot > last || !column.holds(bundle);
  }
}
