package skidway.staging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/**
 * Works out the lifts that build the stacks in the order in which bundles come off the trucks. A
 * bundle whose place in its stack is not ready is set down at a waiting place and lifted on as soon
 * as it can be.
 *
 * <p>Waiting places are spots that the plan does not use and that stand in nobody's way; the
 * machine must reach the waiting place and the stack from one stand.
 */
final class Unloading {
  /** The lifts, with spot numbers still unnamed; {@code to} and {@code from} are spot numbers. */
  record Lift(StepKind kind, int bundle, int from, int to, int tier, Lifts.Lift machine) {}

  private final Board board;
  private final Occupancy occupancy;
  private final List<Lift> lifts = new ArrayList<>();
  private final int[] built;

  /** Which bundle waits at which spot. */
  private final Map<Integer, Integer> waitsAt = new HashMap<>();

  private final List<Integer> waitingSpots = new ArrayList<>();

  private Unloading(Occupancy occupancy) {
    this.board = occupancy.board;
    this.occupancy = occupancy;
    this.built = new int[board.spotCount()];
  }

  /**
   * The lifts in order.
   *
   * @param lifts as far as they go
   * @param stranded the bundle that would have to wait and has no place to, or {@link
   *     Occupancy#NOWHERE}
   */
  record Sequence(List<Lift> lifts, int stranded) {
    boolean complete() {
      return stranded == Occupancy.NOWHERE;
    }
  }

  static Sequence of(Occupancy occupancy) {
    Unloading unloading = new Unloading(occupancy);
    for (int b = 0; b < occupancy.board.bundleCount(); b++) {
      if (occupancy.spotOf(b) != Occupancy.NOWHERE && !unloading.unload(b)) {
        return new Sequence(List.copyOf(unloading.lifts), b);
      }
    }
    return new Sequence(List.copyOf(unloading.lifts), Occupancy.NOWHERE);
  }

  private boolean unload(int bundle) {
    int spot = occupancy.spotOf(bundle);
    if (board.rack[spot]) {
      lifts.add(new Lift(StepKind.PLACE, bundle, Occupancy.NOWHERE, spot, 0, lift(bundle, spot)));
      return true;
    }
    List<Integer> order = occupancy.stack(spot).order();
    if (order.get(built[spot]) != bundle) {
      return setDown(bundle, spot);
    }
    int tier = ++built[spot];
    lifts.add(new Lift(StepKind.PLACE, bundle, Occupancy.NOWHERE, spot, tier, lift(bundle, spot)));
    while (built[spot] < order.size() && waitsAt.containsKey(order.get(built[spot]))) {
      liftOn(order.get(built[spot]), spot);
    }
    return true;
  }

  private void liftOn(int bundle, int spot) {
    int from = waitsAt.remove(bundle);
    Lifts.Lift machine = across(bundle, lift(bundle, from), from, spot).orElseThrow();
    lifts.add(new Lift(StepKind.LIFT_ON, bundle, from, spot, ++built[spot], machine));
  }

  private boolean setDown(int bundle, int spot) {
    int best = Occupancy.NOWHERE;
    double shortestM = Double.POSITIVE_INFINITY;
    for (int s = 0; s < board.spotCount(); s++) {
      if (!mayWaitAt(bundle, s)) {
        continue;
      }
      Lifts.Lift down = lift(bundle, s);
      Optional<Lifts.Lift> on = across(bundle, down, s, spot);
      double driveM = down.driveM() + on.map(Lifts.Lift::driveM).orElse(Double.POSITIVE_INFINITY);
      if (driveM < shortestM) {
        best = s;
        shortestM = driveM;
      }
    }
    if (best == Occupancy.NOWHERE) {
      return false;
    }
    waitsAt.put(bundle, best);
    if (!waitingSpots.contains(best)) {
      waitingSpots.add(best);
    }
    lifts.add(new Lift(StepKind.SET_DOWN, bundle, Occupancy.NOWHERE, best, 1, lift(bundle, best)));
    return true;
  }

  private boolean mayWaitAt(int bundle, int waiting) {
    if (board.rack[waiting]
        || occupancy.count(waiting) > 0
        || !occupancy.free(waiting)
        || board.placeMs[bundle][waiting] == Board.REFUSED
        || waitsAt.containsValue(waiting)) {
      return false;
    }
    return waitingSpots.stream().noneMatch(other -> board.exclude(waiting, other))
        && beneathBears(bundle, waiting);
  }

  /** Whether deck and yard bear it while it waits, counting all that ever wait and all stacks. */
  private boolean beneathBears(int bundle, int waiting) {
    List<Integer> bundles = new ArrayList<>(List.of(bundle));
    List<Integer> places = new ArrayList<>(List.of(waiting));
    for (Lift lift : lifts) {
      if (lift.kind() == StepKind.SET_DOWN) {
        bundles.add(lift.bundle());
        places.add(lift.to());
      }
    }
    return occupancy.takesWaiting(bundles, places);
  }

  private Lifts.Lift lift(int bundle, int spot) {
    return board
        .lifts
        .offTruck(board.bundles.get(bundle), board.massKg[bundle], centre(spot))
        .orElseThrow();
  }

  /** The lift from a waiting place onto a stack, from where the machine set the bundle down. */
  private Optional<Lifts.Lift> across(int bundle, Lifts.Lift down, int from, int to) {
    return board.lifts.across(
        board.bundles.get(bundle),
        board.massKg[bundle],
        down.stand().at(),
        centre(from),
        centre(to));
  }

  private Point centre(int spot) {
    return board.spots.get(spot).footprint().centre();
  }

  /** The steps as the unloading sheet shows them. */
  static List<Step> steps(Occupancy occupancy, List<Lift> lifts, Map<Integer, Spot> named) {
    Board board = occupancy.board;
    List<Step> steps = new ArrayList<>();
    for (Lift lift : lifts) {
      Bundle bundle = board.bundles.get(lift.bundle());
      String from =
          lift.from() == Occupancy.NOWHERE ? bundle.loadId() : named.get(lift.from()).id();
      steps.add(
          new Step(
              steps.size() + 1,
              lift.kind(),
              bundle.id(),
              from,
              named.get(lift.to()).id(),
              lift.tier(),
              lift.machine().stand().id(),
              lift.machine().reachM(),
              bundle.mass().highKg(),
              lift.machine().capacityKg(),
              bearers(occupancy, lift)));
    }
    return steps;
  }

  /** The lowest bearers carry the whole stack, those above only hold two bundles apart. */
  private static BearerRow bearers(Occupancy occupancy, Lift lift) {
    Board board = occupancy.board;
    Bundle bundle = board.bundles.get(lift.bundle());
    if (lift.tier() == 0) {
      return BearerRow.NONE;
    }
    if (lift.tier() > 1) {
      return board.footings.betweenTiers(bundle);
    }
    double massKg =
        lift.kind() == StepKind.SET_DOWN
            ? board.massKg[lift.bundle()]
            : occupancy.massKg(lift.to());
    return board.footings.underStack(board.footing[lift.to()], bundle, massKg);
  }
}
