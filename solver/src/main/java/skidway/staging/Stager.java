package skidway.staging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.optaplanner.core.config.solver.EnvironmentMode;
import skidway.plan.Baseline;
import skidway.plan.Plan;
import skidway.plan.Search;
import skidway.plan.Task;

/**
 * Stages a delivery: lays out spots, prices every bundle on every spot, builds a first plan,
 * improves it, and makes sure that it can be walked through and carried out.
 *
 * <p>Paths that stacks shut, and stacks that cannot be built for want of a waiting place, are found
 * only on a finished plan. What caused them is forbidden and the search goes on from there.
 */
public final class Stager {
  /** Rounds of search, shut paths and search again before bundles are left without a spot. */
  private static final int MOST_REPAIRS = 40;

  /**
   * A repair run has this share of the calculations of the main run, all together twice as many.
   */
  private static final int REPAIR_SHARE = 20;

  /** Repairs that still try to keep set-downs; after them no bundle may wait for another. */
  private static final int REPAIRS_WITH_WAITS = 20;

  /** Spots tried for each bundle that repairs have left without one. */
  private static final int LAST_TRIES = 40;

  private final Board board;
  private final SearchLimits limits;
  private final PathCheck paths;
  private final Watcher watcher;
  private final StopButton stop;
  private final EnvironmentMode mode;
  private final List<int[]> shutTogether = new ArrayList<>();

  /** Stagings met on the way when something lies there already: who lies on which spot. */
  private final List<int[]> others = new ArrayList<>();

  private Waits waits = Waits.FREE;
  private StackEvaluator evaluator;
  private final Proving proving;

  private Stager(
      Board board,
      SearchLimits limits,
      PathCheck paths,
      Watcher watcher,
      StopButton stop,
      EnvironmentMode mode) {
    this.board = board;
    this.limits = limits;
    this.paths = paths;
    this.watcher = watcher;
    this.stop = stop;
    this.mode = mode;
    this.evaluator = new StackEvaluator(board, waits);
    this.proving = new Proving(board, limits, stop);
  }

  /**
   * The plan for a task: revision 1, not yet labelled with its inputs or margins.
   *
   * @param watcher told of every better plan
   * @param stop ends the search early when pressed
   */
  public static Plan stage(
      Task task, SearchLimits limits, PathCheck paths, Watcher watcher, StopButton stop) {
    return stage(task, limits, paths, watcher, stop, EnvironmentMode.REPRODUCIBLE);
  }

  static Plan stage(
      Task task,
      SearchLimits limits,
      PathCheck paths,
      Watcher watcher,
      StopButton stop,
      EnvironmentMode mode) {
    return stage(Survey.of(task), limits, paths, watcher, stop, mode);
  }

  /** The plan for a task that was surveyed already. */
  static Plan stage(
      Board board,
      SearchLimits limits,
      PathCheck paths,
      Watcher watcher,
      StopButton stop,
      EnvironmentMode mode) {
    return new Rounds(limits, stop)
        .best(round -> new Stager(board, round, paths, watcher, stop, mode).plan());
  }

  private Plan plan() {
    boolean fresh = board.task.start().stacks().isEmpty();
    List<Baseline> baselines = new ArrayList<>();
    Occupancy found = fresh ? freshly(baselines) : onWhatLies(baselines);
    Occupancy sound = makeSound(found, 0);
    if (leavesOutWhatLies(sound)) {
      sound = makeSound(asItLies(sound), MOST_REPAIRS + 1);
    }
    placeWhatIsLeft(sound);
    waits = Waits.FREE;
    evaluator = new StackEvaluator(board, waits);
    sound = carriedOutBest(proving.close(tribunal(sound)));
    Search search =
        new Search(limits.seed(), limits.calculations(), limits.until(), stop.pressed());
    List<Unloading.Lift> lifts = Unloading.of(sound).lifts();
    return new PlanWriter(sound, lifts)
        .plan(search, baselines)
        .withProof(proving.proof(sound, lifts));
  }

  private Occupancy freshly(List<Baseline> baselines) {
    StagingSolution.Ground ground = ground(limits.calculations());
    baselines.addAll(new Baselines(ground).all());
    Occupancy occupancy = ground.empty();
    new RegretInsertion(occupancy).fill();
    proving.begin(occupancy);
    improve(occupancy, limits.calculations());
    return occupancy;
  }

  /**
   * Searches on from two stagings: the one where everything stays as it was meant to be, and the
   * one that would be best if nothing lay there yet, the moves to it counted. So the plan is never
   * worse than either.
   */
  private Occupancy onWhatLies(List<Baseline> baselines) {
    long share = Math.max(1, limits.calculations() / 3);
    Occupancy asBefore = ground(share).empty();
    new AsBefore(asBefore).lay();
    proving.begin(asBefore);
    Occupancy afresh = ground(share).empty();
    afresh.restore(afresh(share));
    dropOffenders(afresh);
    layBack(afresh);
    new RegretInsertion(afresh).fill();
    baselines.add(AsBefore.baseline(asBefore, asBefore.legal() && isSound(asBefore)));
    if (!board.byHand() && afresh.legal() && isSound(afresh)) {
      baselines.add(afreshBaseline(afresh));
    }
    others.add(asBefore.snapshot());
    others.add(afresh.snapshot());
    improve(asBefore, share);
    improve(afresh, share);
    others.add(asBefore.snapshot());
    others.add(afresh.snapshot());
    return afresh.isBetterThan(asBefore) ? afresh : asBefore;
  }

  /**
   * Of a staging and the others met on the way the one that takes least when carried out: how often
   * bundles are set aside is known only then.
   */
  private Occupancy carriedOutBest(Occupancy found) {
    Occupancy best = found;
    for (int[] snapshot : others) {
      Occupancy other = ground(1).empty();
      other.restore(snapshot);
      boolean possible = other.legal() && !leavesOutWhatLies(other) && isSound(other);
      best = possible && takesLess(other, best) ? other : best;
    }
    return best;
  }

  private static boolean takesLess(Occupancy one, Occupancy other) {
    return one.unplaced() != other.unplaced()
        ? one.unplaced() < other.unplaced()
        : PlanWriter.effort(one).totalS() < PlanWriter.effort(other).totalS() - 1e-6;
  }

  /** Where everything would lie if nothing lay there yet but what must stay. */
  private int[] afresh(long calculations) {
    Board cleared = board.cleared();
    Stager other = new Stager(cleared, limits, paths, (placed, of, hours) -> {}, stop, mode);
    Occupancy occupancy = other.ground(calculations).empty();
    occupancy.layStart();
    new RegretInsertion(occupancy).fill();
    other.improve(occupancy, calculations);
    return occupancy.snapshot();
  }

  private static Baseline afreshBaseline(Occupancy occupancy) {
    return new Baseline(
        "afresh",
        "Planned as if nothing lay there yet, with all the moves that takes.",
        occupancy.board.bundleCount() - occupancy.unplaced(),
        PlanWriter.effort(occupancy));
  }

  private StagingSolution.Ground ground(long calculations) {
    return new StagingSolution.Ground(
        board, evaluator, List.copyOf(shutTogether), stop, new DrawBudget(calculations));
  }

  private void improve(Occupancy occupancy, long calculations) {
    int delivered = board.bundleCount();
    int[] best =
        new TwoSearches(ground(calculations), mode)
            .improve(
                occupancy.snapshot(),
                limits.seed(),
                calculations,
                (placed, ms) -> watcher.better(placed, delivered, ms / 1000.0));
    occupancy.restore(best);
    new RegretInsertion(occupancy).fill();
    new Polish(occupancy).run();
  }

  /**
   * Forbids what shuts paths or cannot be built, and searches on, until nothing is left to forbid.
   * After many rounds all that lies there stays; from then on bundles from trucks are only taken
   * off, so that there is an end.
   */
  private Occupancy makeSound(Occupancy first, int firstRound) {
    Occupancy occupancy = first;
    for (int round = firstRound; learn(occupancy, round); round++) {
      occupancy = round == MOST_REPAIRS ? asItLies(occupancy) : repaired(occupancy, round);
    }
    return occupancy;
  }

  private Occupancy repaired(Occupancy before, int round) {
    Occupancy next = ground(1).empty();
    next.restore(before.snapshot());
    dropOffenders(next);
    if (round < MOST_REPAIRS) {
      layBack(next);
      new RegretInsertion(next).fill();
      improve(next, Math.max(1, limits.calculations() / REPAIR_SHARE));
    }
    return next;
  }

  /** What lies there stays as it lies, nothing waits; the rest stays where that is still open. */
  private Occupancy asItLies(Occupancy before) {
    waits = waits.withoutAny().withoutMoves();
    evaluator = new StackEvaluator(board, waits);
    Occupancy next = ground(1).empty();
    next.layStart();
    for (int b = 0; b < board.bundleCount(); b++) {
      if (!board.lies(b)) {
        next.put(b, before.spotOf(b));
        if (!next.legal()) {
          next.take(b);
        }
      }
    }
    return next;
  }

  private boolean leavesOutWhatLies(Occupancy occupancy) {
    return IntStream.range(0, board.bundleCount())
        .anyMatch(b -> board.lies(b) && occupancy.spotOf(b) == Occupancy.NOWHERE);
  }

  private boolean isSound(Occupancy occupancy) {
    return shut(occupancy).isEmpty() && canBeCarriedOut(occupancy);
  }

  private static boolean canBeCarriedOut(Occupancy occupancy) {
    return Unloading.of(occupancy).complete();
  }

  private Tribunal tribunal(Occupancy found) {
    return new Tribunal(found, ground(1), this::shut, Stager::canBeCarriedOut);
  }

  /** Whether the plan is unsound; what makes it so is forbidden from now on. */
  private boolean learn(Occupancy occupancy, int round) {
    List<int[]> shut = shut(occupancy);
    shutTogether.addAll(shut);
    int stranded = Unloading.of(occupancy).stranded();
    if (stranded != Occupancy.NOWHERE) {
      waits = fewerWaits(stranded, occupancy, round);
      evaluator = new StackEvaluator(board, waits);
    }
    return !shut.isEmpty() || stranded != Occupancy.NOWHERE;
  }

  /** Sets of spots that at some moment together shut a path, but for those that must stay. */
  private List<int[]> shut(Occupancy occupancy) {
    List<int[]> shut = new ArrayList<>();
    for (int moment = 0; moment < board.moments; moment++) {
      List<Integer> used = used(occupancy, moment);
      Map<String, Integer> byId = new HashMap<>();
      used.forEach(s -> byId.put(board.spots.get(s).id(), s));
      for (List<String> together : paths.shutBy(used.stream().map(board.spots::get).toList())) {
        int[] spots = together.stream().mapToInt(byId::get).sorted().toArray();
        boolean told = shut.stream().anyMatch(other -> Arrays.equals(other, spots));
        if (!told
            && !wasShut(spots)
            && !IntStream.of(spots).allMatch(s -> mustStay(occupancy, s))) {
          shut.add(spots);
        }
      }
    }
    return shut;
  }

  /** Whether what lies there from the start shuts the same path, if it is left there. */
  private boolean wasShut(int[] spots) {
    return IntStream.of(spots).allMatch(s -> IntStream.of(board.home).anyMatch(home -> home == s));
  }

  /** Whether something lies on a spot that nobody may lift. */
  private boolean mustStay(Occupancy occupancy, int spot) {
    return IntStream.range(0, occupancy.count(spot))
        .map(i -> occupancy.member(spot, i))
        .anyMatch(b -> staysAt(b, spot));
  }

  private boolean staysAt(int bundle, int spot) {
    return board.home[bundle] == spot && !waits.mayLift(board, bundle);
  }

  private Waits fewerWaits(int stranded, Occupancy occupancy, int round) {
    if (board.lies(stranded)) {
      return waits.mayLift(board, stranded) ? waits.withoutLifting(stranded) : waits.withoutMoves();
    }
    return round < REPAIRS_WITH_WAITS ? withoutWaitsOf(stranded, occupancy) : waits.withoutAny();
  }

  /** The stranded bundle may not wait again for those that belong under it in this stack. */
  private Waits withoutWaitsOf(int stranded, Occupancy occupancy) {
    List<Integer> order = occupancy.stack(occupancy.spotOf(stranded)).order();
    Waits fewer = waits;
    for (int beneath : order.subList(0, order.indexOf(stranded))) {
      if (beneath > stranded) {
        fewer = fewer.without(stranded, beneath);
      }
    }
    return fewer;
  }

  /** What lies on site and was dropped stays where it lies, if that is still open. */
  private void layBack(Occupancy occupancy) {
    for (int b = 0; b < board.bundleCount(); b++) {
      if (board.lies(b) && occupancy.spotOf(b) == Occupancy.NOWHERE) {
        occupancy.put(b, board.home[b]);
        if (!occupancy.legal()) {
          occupancy.take(b);
        }
      }
    }
  }

  /** Takes bundles off until nothing forbidden is left. */
  private void dropOffenders(Occupancy occupancy) {
    for (int[] together : shutTogether) {
      if (usedTogether(occupancy, together)) {
        int fewest =
            IntStream.of(together)
                .filter(s -> !mustStay(occupancy, s))
                .boxed()
                .min(Comparator.comparingInt(occupancy::count))
                .orElseThrow();
        while (occupancy.count(fewest) > 0) {
          occupancy.take(occupancy.member(fewest, 0));
        }
      }
    }
    for (int s : used(occupancy)) {
      while (!occupancy.stack(s).legal()) {
        occupancy.take(occupancy.member(s, offender(occupancy, s)));
      }
    }
  }

  private boolean usedTogether(Occupancy occupancy, int[] spots) {
    return IntStream.range(0, board.moments)
        .anyMatch(moment -> IntStream.of(spots).allMatch(s -> occupancy.count(s, moment) > 0));
  }

  /**
   * The bundle without which a stack would be legal, or else the last one off; one that must stay
   * only if there is no other.
   */
  private int offender(Occupancy occupancy, int spot) {
    int last = occupancy.count(spot) - 1;
    while (last > 0 && staysAt(occupancy.member(spot, last), spot)) {
      last--;
    }
    for (int i = 0; i < last; i++) {
      int bundle = occupancy.member(spot, i);
      if (staysAt(bundle, spot)) {
        continue;
      }
      occupancy.take(bundle);
      boolean legal = occupancy.stack(spot).legal();
      occupancy.put(bundle, spot);
      if (legal) {
        return i;
      }
    }
    return last;
  }

  /**
   * Repairs may have left bundles without a spot; each takes the first one that keeps the plan
   * sound.
   */
  private void placeWhatIsLeft(Occupancy occupancy) {
    for (int b = 0; b < board.bundleCount(); b++) {
      int tries = LAST_TRIES;
      for (int i = 0; i < board.near[b].length && tries > 0; i++) {
        if (occupancy.spotOf(b) != Occupancy.NOWHERE) {
          break;
        }
        occupancy.put(b, board.near[b][i]);
        if (occupancy.legal()) {
          tries--;
        }
        if (!occupancy.legal() || !isSound(occupancy)) {
          occupancy.take(b);
        }
      }
    }
  }

  private List<Integer> used(Occupancy occupancy, int moment) {
    return used(occupancy).stream().filter(s -> occupancy.count(s, moment) > 0).toList();
  }

  private List<Integer> used(Occupancy occupancy) {
    return IntStream.range(0, board.spotCount())
        .filter(s -> occupancy.count(s) > 0)
        .boxed()
        .toList();
  }
}
