package skidway.staging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.optaplanner.core.config.solver.EnvironmentMode;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.plan.Unplaced;
import skidway.site.Spot;

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

  /** A repair run's share of the calculations of the main run. */
  private static final int REPAIR_SHARE = 10;

  private final Board board;
  private final SearchLimits limits;
  private final PathCheck paths;
  private final Watcher watcher;
  private final StopButton stop;
  private final EnvironmentMode mode;
  private final List<int[]> shutTogether = new ArrayList<>();
  private boolean allowSetDown = true;

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
    return new Stager(Survey.of(task), limits, paths, watcher, stop, mode).plan();
  }

  private Plan plan() {
    StagingSolution.Ground ground = ground();
    List<Baseline> baselines = new Baselines(ground).all();
    Occupancy occupancy = ground.empty();
    new RegretInsertion(occupancy).fill();
    improve(occupancy, limits.calculations());
    Occupancy sound = makeSound(occupancy);
    List<Unloading.Lift> lifts = Unloading.of(sound).orElseThrow();
    return written(sound, lifts, baselines);
  }

  private StagingSolution.Ground ground() {
    return new StagingSolution.Ground(
        board, new StackEvaluator(board, allowSetDown), List.copyOf(shutTogether), stop);
  }

  private void improve(Occupancy occupancy, long calculations) {
    int delivered = board.bundleCount();
    int[] best =
        new Annealing(ground(), mode)
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
   */
  private Occupancy makeSound(Occupancy first) {
    Occupancy occupancy = first;
    for (int round = 0; ; round++) {
      boolean sound = learn(occupancy);
      if (sound) {
        return occupancy;
      }
      Occupancy next = ground().empty();
      next.restore(occupancy.snapshot());
      dropOffenders(next);
      if (round < MOST_REPAIRS) {
        new RegretInsertion(next).fill();
        improve(next, limits.calculations() / REPAIR_SHARE);
      }
      occupancy = next;
    }
  }

  /** Whether the plan is sound; if not, what is wrong with it is forbidden from now on. */
  private boolean learn(Occupancy occupancy) {
    Map<String, Integer> byId = new HashMap<>();
    List<Spot> used = new ArrayList<>();
    for (int s : used(occupancy)) {
      byId.put(board.spots.get(s).id(), s);
      used.add(board.spots.get(s));
    }
    List<List<String>> shut = paths.shutBy(used);
    for (List<String> together : shut) {
      shutTogether.add(together.stream().mapToInt(byId::get).toArray());
    }
    boolean buildable = Unloading.of(occupancy).isPresent();
    allowSetDown &= buildable;
    return shut.isEmpty() && buildable;
  }

  /**
   * Takes bundles off until nothing forbidden is left: the last spot of a set, the top of a stack.
   */
  private void dropOffenders(Occupancy occupancy) {
    for (int[] together : shutTogether) {
      if (IntStream.of(together).allMatch(s -> occupancy.count(s) > 0)) {
        int last = together[together.length - 1];
        while (occupancy.count(last) > 0) {
          occupancy.take(occupancy.member(last, 0));
        }
      }
    }
    for (int s : used(occupancy)) {
      while (!occupancy.stack(s).legal()) {
        occupancy.take(occupancy.member(s, occupancy.count(s) - 1));
      }
    }
  }

  private List<Integer> used(Occupancy occupancy) {
    return IntStream.range(0, board.spotCount())
        .filter(s -> occupancy.count(s) > 0)
        .boxed()
        .toList();
  }

  private Plan written(Occupancy occupancy, List<Unloading.Lift> lifts, List<Baseline> baselines) {
    List<Integer> used = used(occupancy);
    List<Integer> waiting =
        lifts.stream()
            .filter(l -> l.kind() == StepKind.SET_DOWN)
            .map(Unloading.Lift::to)
            .distinct()
            .toList();
    Map<Integer, Spot> named = new SpotCodes(board.task).name(board, used, waiting);
    List<Stack> stacks = new ArrayList<>();
    named.forEach(
        (s, spot) -> {
          if (occupancy.count(s) > 0) {
            stacks.add(new Stack(spot, bundleIds(occupancy, s)));
          }
        });
    List<Unplaced> unplaced = new ArrayList<>();
    WhyUnplaced why = new WhyUnplaced(occupancy);
    for (int b = 0; b < board.bundleCount(); b++) {
      if (occupancy.spotOf(b) == Occupancy.NOWHERE) {
        unplaced.add(why.of(b));
      }
    }
    return new Plan(
        board.task.jobName(),
        1,
        "",
        "",
        new Search(limits.seed(), limits.calculations(), stop.pressed()),
        stacks,
        waiting.stream().map(named::get).toList(),
        Unloading.steps(board, lifts, named),
        new Reasons(occupancy, named).all(),
        unplaced,
        effort(occupancy, lifts),
        baselines,
        List.of());
  }

  private List<String> bundleIds(Occupancy occupancy, int spot) {
    List<Integer> order =
        board.rack[spot]
            ? IntStream.range(0, occupancy.count(spot))
                .mapToObj(i -> occupancy.member(spot, i))
                .toList()
            : occupancy.stack(spot).order();
    return order.stream().map(b -> board.bundles.get(b).id()).toList();
  }

  /** Crew time of the plan as carried out, drives to waiting places included. */
  private Effort effort(Occupancy occupancy, List<Unloading.Lift> lifts) {
    Effort effort = Effort.NONE;
    for (int s : used(occupancy)) {
      for (int i = 0; i < occupancy.count(s); i++) {
        Effort one = Efforts.ofBundle(board, occupancy.member(s, i), s);
        effort = effort.plus(new Effort(one.carryS(), one.rehandleS(), 0, 0));
      }
      effort = effort.plus(new Effort(0, occupancy.stack(s).rehandleMs() / 1000.0, 0, 0));
    }
    return effort.plus(machineEffort(lifts));
  }

  private Effort machineEffort(List<Unloading.Lift> lifts) {
    Map<Integer, Unloading.Lift> setDown = new HashMap<>();
    Effort effort = Effort.NONE;
    for (Unloading.Lift lift : lifts) {
      if (lift.kind() == StepKind.LIFT_ON) {
        Unloading.Lift before = Optional.ofNullable(setDown.get(lift.bundle())).orElseThrow();
        double drive = before.machine().stand().at().distanceTo(lift.machine().stand().at());
        effort = effort.plus(new Effort(0, 0, board.time.liftMs(drive) / 1000.0, 0));
      } else {
        setDown.put(lift.bundle(), lift);
        effort =
            effort.plus(new Effort(0, 0, 0, board.time.liftMs(lift.machine().driveM()) / 1000.0));
      }
    }
    return effort;
  }
}
