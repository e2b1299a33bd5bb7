package skidway.staging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

/**
 * Where bundles wait while others are put beneath them: on spots that the plan does not use and
 * that stand in nobody's way.
 */
final class WaitingPlaces {
  private final Board board;
  private final Occupancy occupancy;

  /** Which bundle waits at which spot. */
  private final Map<Integer, Integer> waitsAt = new HashMap<>();

  /** Spots where a bundle waits or has waited. */
  private final List<Integer> used = new ArrayList<>();

  /** Who ever waited, and where. */
  private final List<Integer> bundles = new ArrayList<>();

  private final List<Integer> places = new ArrayList<>();

  WaitingPlaces(Occupancy occupancy) {
    this.board = occupancy.board;
    this.occupancy = occupancy;
  }

  boolean waits(int bundle) {
    return waitsAt.containsKey(bundle);
  }

  boolean anyAt(int spot) {
    return waitsAt.containsValue(spot);
  }

  /** The place a bundle waits at. */
  int place(int bundle) {
    Integer at = waitsAt.get(bundle);
    if (at == null) {
      throw new IllegalStateException(bundle + " does not wait.");
    }
    return at;
  }

  /** The place a bundle waits at; it waits no longer. */
  int leave(int bundle) {
    int from = place(bundle);
    waitsAt.remove(bundle);
    return from;
  }

  /**
   * Takes the place with the shortest drives for a bundle, if there is one.
   *
   * @param driveM there and on from there; empty where the machine cannot do it
   * @param open which spots nothing stands in the way of at this time
   */
  Optional<Integer> take(int bundle, IntFunction<Optional<Double>> driveM, IntPredicate open) {
    int best = Occupancy.NOWHERE;
    double shortestM = Double.POSITIVE_INFINITY;
    for (int s = 0; s < board.spotCount(); s++) {
      if (!open.test(s) || !mayWaitAt(bundle, s)) {
        continue;
      }
      double wayM = driveM.apply(s).orElse(Double.POSITIVE_INFINITY);
      if (wayM < shortestM) {
        best = s;
        shortestM = wayM;
      }
    }
    if (best == Occupancy.NOWHERE) {
      return Optional.empty();
    }
    waitsAt.put(bundle, best);
    if (!used.contains(best)) {
      used.add(best);
    }
    bundles.add(bundle);
    places.add(best);
    return Optional.of(best);
  }

  private boolean mayWaitAt(int bundle, int spot) {
    if (board.rack[spot]
        || occupancy.count(spot) > 0
        || !occupancy.free(spot)
        || board.placeMs[bundle][spot] == Board.REFUSED
        || waitsAt.containsValue(spot)) {
      return false;
    }
    return used.stream().noneMatch(other -> board.exclude(spot, other)) && bears(bundle, spot);
  }

  /** Whether deck and yard bear it while it waits, counting all that ever wait and all stacks. */
  private boolean bears(int bundle, int spot) {
    List<Integer> all = new ArrayList<>(List.of(bundle));
    List<Integer> at = new ArrayList<>(List.of(spot));
    all.addAll(bundles);
    at.addAll(places);
    return occupancy.takesWaiting(all, at, board.comes[bundle]);
  }
}
