package skidway.shakeout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.plan.Effort;
import skidway.plan.PieceHours;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.rules.Setting;
import skidway.site.SpotKind;

/**
 * Plans how the bundles of a plan are used up: divides the courses into waves and finds for each
 * which pieces to bring onto which piles by the walls.
 *
 * <p>What pieces cost from one refill point to the next does not depend on the other waves, so the
 * best division is a shortest path over the refill points; going on without a wave is one of the
 * ways, so the result is never worse than pulling every piece straight from its bundle.
 */
public final class Waves {
  /** Checks of all waves before what is still at fault is left out. */
  private static final int MOST_REPAIRS = 10;

  private final Task task;
  private final Timbers timbers;
  private final Room room;
  private final WaveSearch search;
  private final int[] points;
  private final Map<Long, WaveDraft> known = new HashMap<>();

  /** Most layers by refill point and place, for piles that turned out too much. */
  private final Map<Integer, Map<Integer, Integer>> mostLayers = new HashMap<>();

  private final Set<Integer> withoutPiles = new HashSet<>();

  private Waves(Task task, Plan plan) {
    this.task = task;
    timbers = new Timbers(task, plan);
    room = new Room(timbers, plan);
    search = new WaveSearch(timbers, room);
    points = RefillPoints.of(timbers.pieces);
  }

  /**
   * The waves for a plan, not yet labelled with the fingerprint of the plan's file.
   *
   * @param check says which piles must not stand
   */
  public static WavePlan of(Task task, Plan plan, PileCheck check) {
    return new Waves(task, plan).plan(plan, check);
  }

  /**
   * What a plan costs if every piece is pulled straight from its bundle, all bundles' unloading
   * included: as many hours as the plan states itself, sorted otherwise.
   */
  public static PieceHours straight(Task task, Plan plan) {
    return straight(new Timbers(task, plan)).plus(bundles(task, plan));
  }

  private static PieceHours straight(Timbers timbers) {
    return AtBundles.cost(timbers, 0, new boolean[timbers.count()]).hours();
  }

  private WavePlan plan(Plan plan, PileCheck check) {
    List<WaveDraft> drafts = cheapest();
    List<Wave> waves = written(drafts);
    for (int round = 0; learn(waves, drafts, check, round); round++) {
      drafts = cheapest();
      waves = written(drafts);
    }
    Cost with = drafts.stream().map(WaveDraft::cost).reduce(Cost.NONE, Cost::plus);
    PieceHours bundles = bundles(task, plan);
    return new WavePlan(
        plan.jobName(),
        plan.revision(),
        "",
        waves,
        straight(timbers).plus(bundles),
        with.hours().plus(bundles));
  }

  /** What bundles cost whatever becomes of their pieces: the machine, and filling racks. */
  private static PieceHours bundles(Task task, Plan plan) {
    Effort effort = plan.effort();
    long racked =
        plan.stacks().stream()
            .filter(stack -> stack.spot().kind() == SpotKind.RACK)
            .flatMap(stack -> stack.bundleIds().stream())
            .filter(id -> !task.start().lies(id))
            .flatMap(id -> task.delivery().bundle(id).stream())
            .mapToLong(bundle -> bundle.pieces().size())
            .sum();
    double layS = racked * task.settings().get(Setting.RACK_PIECE);
    return new PieceHours(0, layS, 0, 0, 0, effort.machineS() + effort.setDownS() + effort.moveS());
  }

  /** The cheapest way from the first refill point to the last; the first found of equals. */
  private List<WaveDraft> cheapest() {
    int n = points.length;
    long[] costMs = new long[n];
    WaveDraft[] last = new WaveDraft[n];
    for (int to = 1; to < n; to++) {
      costMs[to] = Long.MAX_VALUE;
      for (int from = 0; from < to; from++) {
        WaveDraft draft = draft(from, to);
        if (costMs[from] + draft.cost().totalMs() < costMs[to]) {
          costMs[to] = costMs[from] + draft.cost().totalMs();
          last[to] = draft;
        }
      }
    }
    List<WaveDraft> path = new ArrayList<>();
    for (int to = n - 1; to > 0; to = indexOf(last[to].from())) {
      path.add(0, last[to]);
    }
    return path;
  }

  /** Up to where a wave brings whatever pays; of what comes later only what is dug out before. */
  private int near(int fromPoint) {
    int ahead = (int) task.settings().get(Setting.COURSES_AHEAD);
    return points[Math.min(points.length - 1, fromPoint + ahead)];
  }

  private int indexOf(int laid) {
    return Arrays.binarySearch(points, laid);
  }

  private WaveDraft draft(int fromPoint, int toPoint) {
    int from = points[fromPoint];
    int to = points[toPoint];
    return known.computeIfAbsent(
        (long) fromPoint << 32 | toPoint,
        key ->
            withoutPiles.contains(from)
                ? search.straight(from, to)
                : search.best(
                    from,
                    to,
                    near(fromPoint),
                    room.heightsM(from, to),
                    mostLayers.getOrDefault(from, Map.of())));
  }

  private List<Wave> written(List<WaveDraft> drafts) {
    WaveWriter writer = new WaveWriter(timbers, room);
    List<Wave> waves = new ArrayList<>();
    for (WaveDraft draft : drafts) {
      if (!draft.piles().isEmpty()) {
        waves.add(writer.wave(waves.size() + 1, draft));
      }
    }
    return waves;
  }

  /** Whether some pile may not stand; it gets half its layers from now on, or none. */
  private boolean learn(List<Wave> waves, List<WaveDraft> drafts, PileCheck check, int round) {
    boolean learnt = false;
    for (Wave wave : waves) {
      List<String> faulty = check.faulty(wave);
      int from = wave.laidBefore();
      if (!faulty.isEmpty()) {
        learnt = true;
        WaveDraft draft = drafts.stream().filter(d -> d.from() == from).findFirst().orElseThrow();
        if (round >= MOST_REPAIRS) {
          withoutPiles.add(from);
        }
        forbid(wave, draft, faulty.get(faulty.size() - 1));
        known.keySet().removeIf(key -> points[(int) (key >> 32)] == from);
      }
    }
    return learnt;
  }

  private void forbid(Wave wave, WaveDraft draft, String pileId) {
    for (int p = 0; p < wave.piles().size(); p++) {
      if (wave.piles().get(p).id().equals(pileId)) {
        int layers = wave.piles().get(p).layers().size();
        mostLayers
            .computeIfAbsent(draft.from(), from -> new HashMap<>())
            .put(draft.piles().get(p).place(), layers / 2);
      }
    }
  }
}
