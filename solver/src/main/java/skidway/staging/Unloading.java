package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.site.Spot;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/**
 * Works out the lifts that build the stacks in the order in which bundles come off the trucks. A
 * bundle whose place in its stack is not ready is set down at a waiting place and lifted on as soon
 * as it can be.
 *
 * <p>Where no machine unloads, people carry each bundle's timbers to their stack in one go; nothing
 * is set down on the way.
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

  /** How many bundles have come to each spot so far. */
  private final int[] built;

  private final WaitingPlaces waiting;

  private Unloading(Occupancy occupancy, WaitingPlaces waiting) {
    this.board = occupancy.board;
    this.occupancy = occupancy;
    this.built = new int[board.spotCount()];
    this.waiting = waiting;
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

  /** What lies on site is brought to its place first, then the trucks are unloaded. */
  static Sequence of(Occupancy occupancy) {
    Rearranging.Result rearranged = Rearranging.of(occupancy);
    Sequence moves = rearranged.sequence();
    Unloading unloading = new Unloading(occupancy, rearranged.waiting());
    unloading.lifts.addAll(moves.lifts());
    if (!moves.complete()) {
      return moves;
    }
    unloading.takeStart();
    for (int b = 0; b < occupancy.board.bundleCount(); b++) {
      boolean comes = occupancy.spotOf(b) != Occupancy.NOWHERE && !occupancy.board.lies(b);
      if (comes && !unloading.unload(b)) {
        return new Sequence(List.copyOf(unloading.lifts), b);
      }
    }
    return new Sequence(List.copyOf(unloading.lifts), Occupancy.NOWHERE);
  }

  private void takeStart() {
    for (int b = 0; b < board.bundleCount(); b++) {
      if (board.lies(b) && occupancy.spotOf(b) != Occupancy.NOWHERE) {
        built[occupancy.spotOf(b)]++;
      }
    }
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
    int tier = tier(bundle, spot);
    built[spot]++;
    lifts.add(new Lift(StepKind.PLACE, bundle, Occupancy.NOWHERE, spot, tier, lift(bundle, spot)));
    while (built[spot] < order.size() && waiting.waits(order.get(built[spot]))) {
      liftOn(order.get(built[spot]), spot);
    }
    return true;
  }

  /** The tier a bundle gets to: those beneath it that are there when it comes, and one. */
  private int tier(int bundle, int spot) {
    int tier = 1;
    for (int beneath : occupancy.stack(spot).order().subList(0, built[spot])) {
      tier += board.isThere(beneath, board.comes[bundle]) ? 1 : 0;
    }
    return tier;
  }

  private void liftOn(int bundle, int spot) {
    int from = waiting.leave(bundle);
    Lifts.Lift machine = across(bundle, lift(bundle, from), from, spot).orElseThrow();
    lifts.add(new Lift(StepKind.LIFT_ON, bundle, from, spot, tier(bundle, spot), machine));
    built[spot]++;
  }

  private boolean setDown(int bundle, int spot) {
    Optional<Integer> place = waiting.take(bundle, s -> driveM(bundle, s, spot), s -> true);
    place.ifPresent(
        best ->
            lifts.add(
                new Lift(
                    StepKind.SET_DOWN, bundle, Occupancy.NOWHERE, best, 1, lift(bundle, best))));
    return place.isPresent();
  }

  private Optional<Double> driveM(int bundle, int place, int spot) {
    Lifts.Lift down = lift(bundle, place);
    return across(bundle, down, place, spot).map(on -> down.driveM() + on.driveM());
  }

  private Lifts.Lift lift(int bundle, int spot) {
    return board.byHand() ? Lifts.BY_HAND : board.offTruck(bundle, spot).orElseThrow();
  }

  /** The lift from a waiting place onto a stack, from where the machine set the bundle down. */
  private Optional<Lifts.Lift> across(int bundle, Lifts.Lift down, int from, int to) {
    return board.lifts.across(
        board.bundles.get(bundle),
        board.massKg[bundle],
        down.stand().at(),
        board.centre(from),
        board.centre(to));
  }

  /** The steps as the unloading sheet shows them. */
  static List<Step> steps(Occupancy occupancy, List<Lift> lifts, Map<Integer, Spot> named) {
    Board board = occupancy.board;
    List<Step> steps = new ArrayList<>();
    for (Lift lift : lifts) {
      Bundle bundle = board.bundles.get(lift.bundle());
      String from =
          lift.from() == Occupancy.NOWHERE ? bundle.loadId() : nameOf(lift.from(), named, board);
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
              bearers(occupancy, lift),
              pickStand(lift)));
    }
    return steps;
  }

  /** A spot from which everything goes away keeps the code it had. */
  private static String nameOf(int spot, Map<Integer, Spot> named, Board board) {
    return named.getOrDefault(spot, board.spots.get(spot)).id();
  }

  private static String pickStand(Lift lift) {
    boolean same = lift.machine().pickStand().equals(lift.machine().stand());
    return same ? "" : lift.machine().pickStand().id();
  }

  /**
   * The lowest bearers carry the whole stack, those above only hold two bundles apart, unless what
   * lies beneath them is used up first.
   */
  private static BearerRow bearers(Occupancy occupancy, Lift lift) {
    Board board = occupancy.board;
    Bundle bundle = board.bundles.get(lift.bundle());
    if (lift.tier() == 0) {
      return BearerRow.NONE;
    }
    double massKg =
        lift.kind().waits()
            ? board.massKg[lift.bundle()]
            : occupancy.massOverLowestKg(lift.to(), lift.bundle());
    return massKg > 0 || lift.tier() == 1
        ? board.footings.underStack(board.footing[lift.to()], bundle, massKg)
        : board.footings.betweenTiers(bundle);
  }
}
