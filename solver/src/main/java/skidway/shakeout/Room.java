package skidway.shakeout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.geometry.WalkingDistances;
import skidway.layout.Exclusion;
import skidway.layout.LegalSpots;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.site.Spot;

/** The places for piles, what excludes what, and the walks to and from them. */
final class Room {
  /** A wall is higher than a pile when it is so by this much; as where bundles are staged. */
  private static final double HIGHER_M = 0.005;

  private final Timbers timbers;
  final List<Spot> places;

  /** Walking distance from a place to each piece's place on its wall, metres. */
  final double[][] toWallM;

  private final int waitingPlaces;
  private final Exclusion exclusion;
  private final Map<Integer, double[]> legalM = new ConcurrentHashMap<>();
  private final Map<Integer, double[][]> bringM = new ConcurrentHashMap<>();

  /** The same by the walls that are in the way. */
  private final Map<Set<String>, double[][]> bringRisenM = new ConcurrentHashMap<>();

  Room(Timbers timbers, Plan plan) {
    this.timbers = timbers;
    places = PilePlaces.of(timbers.task);
    waitingPlaces = plan.waitingPlaces().size();
    List<Spot> all =
        Stream.of(
                timbers.stacks.stream().map(Stack::spot),
                plan.waitingPlaces().stream(),
                places.stream())
            .flatMap(spots -> spots)
            .toList();
    exclusion = Exclusion.of(all, timbers.task.site(), timbers.task.settings());
    toWallM =
        WalkingDistances.between(
            timbers.task.site(), timbers.walker, accesses(places), timbers.order);
  }

  private static List<Point> accesses(List<Spot> spots) {
    return spots.stream().map(Spot::access).toList();
  }

  /** Walking distances by stack and place when so many pieces are laid, metres. */
  double[][] bringM(int laid) {
    return bringM.computeIfAbsent(laid, this::measuredM);
  }

  private double[][] measuredM(int laid) {
    Set<String> risen =
        WalkingDistances.risen(timbers.task.site(), timbers.walker, timbers.order, laid);
    return bringRisenM.computeIfAbsent(
        risen,
        walls ->
            WalkingDistances.between(
                timbers.task.site(),
                timbers.walker,
                accesses(timbers.stacks.stream().map(Stack::spot).toList()),
                accesses(places),
                timbers.order,
                laid));
  }

  /** Whether two places exclude each other. */
  boolean clash(int a, int b) {
    int first = timbers.stacks.size() + waitingPlaces;
    return a == b || IntStream.of(exclusion.of(first + a)).anyMatch(other -> other == first + b);
  }

  /**
   * The places that may be used from one pull to another, beside the stacks that stand then, and
   * how high a pile may be on each; the others have a height of 0.
   */
  double[] heightsM(int from, int to) {
    List<Integer> taken = new ArrayList<>();
    for (int s = 0; s < timbers.stacks.size(); s++) {
      if (timbers.stands(s, from, to)) {
        taken.add(s);
      }
    }
    // Waiting places are kept free all the time; only later loads use them again.
    IntStream.range(0, waitingPlaces).map(w -> timbers.stacks.size() + w).forEach(taken::add);
    double[] heightsM = legalM.computeIfAbsent(from, this::legalM).clone();
    for (int p = 0; p < heightsM.length; p++) {
      int[] excluded = exclusion.of(timbers.stacks.size() + waitingPlaces + p);
      boolean free = IntStream.of(excluded).noneMatch(taken::contains);
      heightsM[p] = free ? heightsM[p] : 0;
    }
    return heightsM;
  }

  /** How high a pile may be on each place when so many pieces are laid; 0 where none may be. */
  private double[] legalM(int laid) {
    LegalSpots legal =
        LegalSpots.of(
            Rise.after(timbers.task.site(), timbers.order, laid), timbers.task.settings());
    double mostM =
        Math.min(
            timbers.task.settings().get(Setting.STACK_HEIGHT),
            timbers.task.settings().get(Setting.HAND_PILE_HEIGHT));
    return places.stream()
        .mapToDouble(
            place -> legal.isLegal(place) ? Math.min(mostM, legal.heightCapM(place) - HIGHER_M) : 0)
        .toArray();
  }
}
