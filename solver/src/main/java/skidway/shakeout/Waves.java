package skidway.shakeout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
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
  private final int[] points;

  /** By refill point, what a wave from it could be, by how many refill points it lasts. */
  private final List<List<WaveDraft>> drafts = new ArrayList<>();

  private final Set<WaveDraft> polished = ConcurrentHashMap.newKeySet();

  /** Most layers by refill point and place, for piles that turned out too much. */
  private final Map<Integer, Map<Integer, Integer>> mostLayers = new HashMap<>();

  private final Set<Integer> withoutPiles = new HashSet<>();

  private Waves(Task task, Plan plan) {
    this.task = task;
    timbers = new Timbers(task, plan);
    room = new Room(timbers, plan);
    points = RefillPoints.of(timbers.pieces);
    drafts.addAll(Collections.nCopies(points.length - 1, List.of()));
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
    List<WaveDraft> best = cheapest();
    List<Wave> waves = written(best);
    for (int round = 0; learn(waves, best, check, round); round++) {
      best = cheapest();
      waves = written(best);
    }
    Cost with = best.stream().map(WaveDraft::cost).reduce(Cost.NONE, Cost::plus);
    PieceHours bundles = bundles(task, plan);
    return new WavePlan(
        plan.jobName(),
        plan.revision(),
        "",
        waves,
        straight(timbers).plus(bundles),
        with.hours().plus(bundles));
  }

  /** What bundles cost whatever becomes of their pieces: unloading, moves, and filling racks. */
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
    double machineS = effort.machineS() + effort.setDownS() + effort.moveS();
    return new PieceHours(0, layS, 0, 0, 0, machineS + effort.offTruckS());
  }

  /** The cheapest way from the first refill point to the last, every wave of it polished. */
  private List<WaveDraft> cheapest() {
    IntStream.range(0, drafts.size())
        .parallel()
        .filter(from -> drafts.get(from).isEmpty())
        .forEach(from -> drafts.set(from, draftsFrom(from)));
    List<WaveDraft> path = path();
    while (!polished.containsAll(path)) {
      path.parallelStream().filter(draft -> !polished.contains(draft)).forEach(this::polish);
      path = path();
    }
    return path;
  }

  /** Looks for a wave from nothing as well as from a shorter one, and for each pile anew. */
  private void polish(WaveDraft draft) {
    int from = indexOf(draft.from());
    WaveSearch search = new WaveSearch(timbers, room);
    WaveDraft anew = best(search, search.straight(draft.from(), draft.from()), draft.to());
    WaveDraft better =
        search.withPilesAnew(
            WaveSearch.cheaper(draft, anew), other -> best(search, other, draft.to()));
    List<WaveDraft> all = new ArrayList<>(drafts.get(from));
    all.set(all.indexOf(draft), better);
    drafts.set(from, all);
    polished.add(better);
  }

  /** The first found of equals. */
  private List<WaveDraft> path() {
    int n = points.length;
    long[] costMs = new long[n];
    Arrays.fill(costMs, 1, n, Long.MAX_VALUE);
    WaveDraft[] last = new WaveDraft[n];
    for (int from = 0; from < drafts.size(); from++) {
      int to = from;
      for (WaveDraft draft : drafts.get(from)) {
        to++;
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

  /** Does not look farther than the last piece that may be brought then. */
  private List<WaveDraft> draftsFrom(int fromPoint) {
    int from = points[fromPoint];
    WaveSearch search = new WaveSearch(timbers, room);
    int farthest = search.farthest(from, near(fromPoint));
    List<WaveDraft> all = new ArrayList<>();
    WaveDraft longest = search.straight(from, from);
    for (int to = fromPoint + 1; to == fromPoint + 1 || points[to - 1] < farthest; to++) {
      longest = best(search, longest, points[to]);
      all.add(longest);
    }
    return List.copyOf(all);
  }

  private WaveDraft best(WaveSearch search, WaveDraft shorter, int to) {
    int from = shorter.from();
    if (withoutPiles.contains(from)) {
      return search.straight(from, to);
    }
    return search.best(
        shorter,
        to,
        near(indexOf(from)),
        room.heightsM(from, to),
        mostLayers.getOrDefault(from, Map.of()));
  }

  /** Up to where a wave brings whatever pays; of what comes later only what is dug out before. */
  private int near(int fromPoint) {
    int ahead = (int) task.settings().get(Setting.COURSES_AHEAD);
    return points[Math.min(points.length - 1, fromPoint + ahead)];
  }

  private int indexOf(int laid) {
    return Arrays.binarySearch(points, laid);
  }

  private List<Wave> written(List<WaveDraft> chosen) {
    WaveWriter writer = new WaveWriter(timbers, room);
    List<Wave> waves = new ArrayList<>();
    for (WaveDraft draft : chosen) {
      if (!draft.piles().isEmpty()) {
        waves.add(writer.wave(waves.size() + 1, draft));
      }
    }
    return waves;
  }

  /** Whether some pile may not stand; it gets half its layers from now on, or none. */
  private boolean learn(List<Wave> waves, List<WaveDraft> chosen, PileCheck check, int round) {
    boolean learnt = false;
    for (Wave wave : waves) {
      List<String> faulty = check.faulty(wave);
      int from = wave.laidBefore();
      if (!faulty.isEmpty()) {
        learnt = true;
        WaveDraft draft = chosen.stream().filter(d -> d.from() == from).findFirst().orElseThrow();
        if (round >= MOST_REPAIRS) {
          withoutPiles.add(from);
        }
        forbid(wave, draft, faulty.get(faulty.size() - 1));
        drafts.set(indexOf(from), List.of());
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
