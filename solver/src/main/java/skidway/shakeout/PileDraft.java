package skidway.shakeout;

import java.util.List;
import skidway.staging.Lifts;

/**
 * A pile in the making.
 *
 * @param place number of its place
 * @param pulls its pieces from the bottom up, by their place in the pull order
 * @param trips what the machine brings of them; people carry the rest
 */
record PileDraft(int place, List<Integer> pulls, List<Trip> trips) {
  /** A load from one bundle. */
  record Trip(String bundleId, List<Integer> pulls, double massKg, Lifts.Lift lift) {
    Trip {
      pulls = List.copyOf(pulls);
    }
  }

  PileDraft {
    pulls = List.copyOf(pulls);
    trips = List.copyOf(trips);
  }

  /** Whether piles hold the pieces from one pull to before another. */
  static boolean[] hold(List<PileDraft> piles, int from, int to) {
    boolean[] held = new boolean[to - from];
    piles.forEach(pile -> pile.pulls().forEach(pull -> held[pull - from] = true));
    return held;
  }

  boolean byMachine(int pull) {
    return trips.stream().anyMatch(trip -> trip.pulls().contains(pull));
  }
}
