package skidway.staging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.StepKind;
import skidway.plan.Unplaced;
import skidway.site.Spot;

/** Writes a finished staging down as a plan: codes, stacks, steps, reasons, hours. */
final class PlanWriter {
  private final Occupancy occupancy;
  private final Board board;
  private final List<Unloading.Lift> lifts;

  PlanWriter(Occupancy occupancy, List<Unloading.Lift> lifts) {
    this.occupancy = occupancy;
    this.board = occupancy.board;
    this.lifts = lifts;
  }

  Plan plan(Search search, List<Baseline> baselines) {
    List<Integer> waiting =
        lifts.stream().filter(l -> l.kind().waits()).map(Unloading.Lift::to).distinct().toList();
    Map<Integer, Spot> named = new SpotCodes(board.task).name(board, used(), waiting);
    return new Plan(
        board.task.jobName(),
        1,
        "",
        "",
        search,
        stacks(named),
        waiting.stream().map(named::get).toList(),
        Unloading.steps(occupancy, lifts, named),
        new Reasons(occupancy, named).all(),
        unplaced(),
        effort(),
        baselines,
        List.of());
  }

  private List<Stack> stacks(Map<Integer, Spot> named) {
    List<Stack> stacks = new ArrayList<>();
    named.forEach(
        (s, spot) -> {
          for (List<Integer> pile : piles(s)) {
            stacks.add(new Stack(spot, pile.stream().map(b -> board.bundles.get(b).id()).toList()));
          }
        });
    return stacks;
  }

  /** The stacks of a spot, one after the other: what never meets is never stacked. */
  private List<List<Integer>> piles(int spot) {
    List<List<Integer>> piles = new ArrayList<>();
    int last = -1;
    for (int bundle : bundles(spot)) {
      if (board.comes[bundle] > last) {
        piles.add(new ArrayList<>());
      }
      piles.get(piles.size() - 1).add(bundle);
      last = Math.max(last, board.lastMoment(bundle));
    }
    return piles;
  }

  private List<Integer> bundles(int spot) {
    return board.rack[spot]
        ? IntStream.range(0, occupancy.count(spot))
            .mapToObj(i -> occupancy.member(spot, i))
            .sorted(Comparator.comparingInt((Integer b) -> board.comes[b]).thenComparing(b -> b))
            .toList()
        : occupancy.stack(spot).order();
  }

  private List<Unplaced> unplaced() {
    if (occupancy.unplaced() == 0) {
      return List.of();
    }
    WhyUnplaced why = new WhyUnplaced(occupancy);
    return IntStream.range(0, board.bundleCount())
        .filter(b -> occupancy.spotOf(b) == Occupancy.NOWHERE)
        .mapToObj(why::of)
        .toList();
  }

  /** Crew time of a staging as carried out, drives to waiting places included. */
  static Effort effort(Occupancy occupancy) {
    return new PlanWriter(occupancy, Unloading.of(occupancy).lifts()).effort();
  }

  private Effort effort() {
    Effort effort = Effort.NONE;
    for (int s : used()) {
      for (int i = 0; i < occupancy.count(s); i++) {
        Effort one = Efforts.ofBundle(board, occupancy.member(s, i), s);
        double insideS = one.insideS().orElseThrow();
        effort =
            effort.plus(
                new Effort(one.carryS(), 0, one.rehandleS(), 0, 0)
                    .withInside(insideS)
                    .withOffTruck(one.offTruckS()));
      }
      Effort stack = Efforts.ofStack(occupancy.stack(s));
      effort = effort.plus(new Effort(0, stack.pickS(), stack.rehandleS(), 0, 0));
    }
    return board.byHand() ? effort : effort.plus(machineEffort());
  }

  private Effort machineEffort() {
    Map<Integer, Unloading.Lift> setDown = new HashMap<>();
    Effort effort = Effort.NONE;
    for (Unloading.Lift lift : lifts) {
      if (board.lies(lift.bundle())) {
        effort = effort.plus(moved(board.time.liftMs(lift.machine().driveM())));
      } else if (lift.kind() == StepKind.LIFT_ON) {
        Unloading.Lift before = Objects.requireNonNull(setDown.get(lift.bundle()));
        double drive = before.machine().stand().at().distanceTo(lift.machine().stand().at());
        effort = effort.plus(new Effort(0, 0, 0, Efforts.seconds(board.time.liftMs(drive)), 0));
      } else {
        setDown.put(lift.bundle(), lift);
        double machineS = Efforts.seconds(board.time.liftMs(lift.machine().driveM()));
        effort = effort.plus(new Effort(0, 0, 0, 0, machineS));
      }
    }
    return effort.plus(moved(board.time.retagMs() * taggedAnew()));
  }

  private static Effort moved(long ms) {
    return new Effort(0, 0, 0, 0, 0, Efforts.seconds(ms));
  }

  /** How many bundles come to lie on another spot or tier than from the start. */
  private long taggedAnew() {
    return IntStream.range(0, board.bundleCount())
        .filter(board::lies)
        .filter(b -> occupancy.spotOf(b) != Occupancy.NOWHERE)
        .filter(b -> occupancy.spotOf(b) != board.home[b] || changesTier(b))
        .count();
  }

  private boolean changesTier(int bundle) {
    int spot = board.home[bundle];
    return !board.rack[spot]
        && occupancy.stack(spot).order().indexOf(bundle) + 1 != board.homeTier[bundle];
  }

  private List<Integer> used() {
    return IntStream.range(0, board.spotCount())
        .filter(s -> occupancy.count(s) > 0)
        .boxed()
        .toList();
  }
}
