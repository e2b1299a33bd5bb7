package skidway.staging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntPredicate;
import skidway.plan.StepKind;
import skidway.site.Point;

/**
 * Works out the lifts that bring what lies on site to where it shall lie, before the next truck
 * comes: only the top of a stack is ever lifted, and only onto a stack that is ready for it, on a
 * deck or yard that bears it beside what has not been moved yet. What is in the way of all others
 * is set aside and lifted on later.
 *
 * <p>Who is set aside first, and where, decides whether all get home and how often they are lifted.
 * The nearest choice is tried first, then a few others; the fewest lifts count.
 */
final class Rearranging {
  /** So many ways to set aside are tried where the first needs any. */
  private static final int ATTEMPTS = 40;

  /**
   * @param waiting the places as they are taken when all lifts are done
   */
  record Result(Unloading.Sequence sequence, WaitingPlaces waiting) {
    private boolean isBetter(Result other) {
      boolean complete = sequence.complete();
      return complete != other.sequence.complete()
          ? complete
          : complete && sequence.lifts().size() < other.sequence.lifts().size();
    }
  }

  private final Board board;
  private final Occupancy occupancy;
  private final WaitingPlaces waiting;
  private final int attempt;
  private final List<Unloading.Lift> lifts = new ArrayList<>();

  /** What lies on each spot now, bottom to top. */
  private final Map<Integer, List<Integer>> now = new HashMap<>();

  private final LoadsNow loads;

  private Rearranging(Occupancy occupancy, int attempt) {
    this.board = occupancy.board;
    this.occupancy = occupancy;
    this.waiting = new WaitingPlaces(occupancy);
    this.attempt = attempt;
    for (int b = 0; b < board.bundleCount(); b++) {
      if (board.lies(b) && !board.rack[board.home[b]]) {
        now.computeIfAbsent(board.home[b], s -> new ArrayList<>()).add(b);
      }
    }
    now.values().forEach(row -> row.sort((a, b) -> board.homeTier[a] - board.homeTier[b]));
    loads = new LoadsNow(board);
  }

  /** The lifts that are best of those tried. */
  static Result of(Occupancy occupancy) {
    Result best = attempt(occupancy, 0);
    boolean straight =
        best.sequence.complete() && best.sequence.lifts().stream().noneMatch(l -> l.kind().waits());
    for (int attempt = 1; attempt <= ATTEMPTS && !straight; attempt++) {
      Result other = attempt(occupancy, attempt);
      best = other.isBetter(best) ? other : best;
    }
    return best;
  }

  private static Result attempt(Occupancy occupancy, int attempt) {
    Rearranging rearranging = new Rearranging(occupancy, attempt);
    return new Result(rearranging.lifts(), rearranging.waiting);
  }

  /** The lifts, as far as they go. */
  private Unloading.Sequence lifts() {
    while (true) {
      List<Integer> astray = astray();
      if (astray.isEmpty()) {
        return new Unloading.Sequence(List.copyOf(lifts), Occupancy.NOWHERE);
      }
      if (astray.stream().noneMatch(this::bringHome) && !setAside(astray)) {
        return new Unloading.Sequence(List.copyOf(lifts), astray.get(0));
      }
    }
  }

  /** What does not lie where it shall, or on something that does not. */
  private List<Integer> astray() {
    List<Integer> astray = new ArrayList<>();
    for (int b = 0; b < board.bundleCount(); b++) {
      if (board.lies(b) && !board.rack[board.home[b]] && !settled(b)) {
        astray.add(b);
      }
    }
    return astray;
  }

  private boolean settled(int bundle) {
    int spot = target(bundle);
    int tier = row(spot).indexOf(bundle);
    return tier >= 0 && tier < ready(spot);
  }

  /** A bundle that the plan leaves without a spot stays where it is. */
  private int target(int bundle) {
    int spot = occupancy.spotOf(bundle);
    return spot == Occupancy.NOWHERE ? board.home[bundle] : spot;
  }

  private List<Integer> row(int spot) {
    return now.computeIfAbsent(spot, s -> new ArrayList<>());
  }

  /** What shall lie on a spot of all that lies on site, bottom to top. */
  private List<Integer> planned(int spot) {
    List<Integer> planned = occupancy.stack(spot).order().stream().filter(board::lies).toList();
    if (!planned.isEmpty() || occupancy.count(spot) > 0) {
      return planned;
    }
    return row(spot).stream().filter(b -> occupancy.spotOf(b) == Occupancy.NOWHERE).toList();
  }

  /** How many tiers of a spot are as they shall be. */
  private int ready(int spot) {
    List<Integer> planned = planned(spot);
    List<Integer> row = row(spot);
    int same = 0;
    while (same < planned.size()
        && same < row.size()
        && planned.get(same).equals(row.get(same))
        && !mustBeLifted(spot, planned, same)) {
      same++;
    }
    return same;
  }

  /** Whether it lies where it shall, but comes off for new bearers or what is done beneath it. */
  private boolean mustBeLifted(int spot, List<Integer> planned, int tier) {
    int bundle = planned.get(tier);
    return occupancy.count(spot) > 0
        && board.home[bundle] == spot
        && tier >= occupancy.stack(spot).untouched()
        && !loads.isLifted(bundle);
  }

  /** Brings a bundle to where it shall lie, if it can be lifted and its place is ready. */
  private boolean bringHome(int bundle) {
    int spot = target(bundle);
    int ready = ready(spot);
    List<Integer> planned = planned(spot);
    boolean next =
        row(spot).size() == ready && ready < planned.size() && planned.get(ready) == bundle;
    if (!next || !isOpen(spot, bundle) || !isOnTop(bundle) || !loads.bear(bundle, spot)) {
      return false;
    }
    boolean waited = waiting.waits(bundle);
    int from = waited ? waiting.place(bundle) : where(bundle);
    Optional<Lifts.Lift> machine = machine(bundle, from, spot);
    if (machine.isEmpty()) {
      return false;
    }
    if (waited) {
      waiting.leave(bundle);
    }
    loads.put(bundle, spot);
    row(from).remove((Integer) bundle);
    row(spot).add(bundle);
    StepKind kind = waited ? StepKind.LIFT_ON : StepKind.MOVE;
    lifts.add(new Unloading.Lift(kind, bundle, from, spot, ready + 1, machine.get()));
    return true;
  }

  /** Nothing lies or waits that excludes the spot, once the bundle hangs on the machine. */
  private boolean isOpen(int spot, int bundle) {
    for (int other : board.excludes[spot]) {
      boolean lies = row(other).stream().anyMatch(b -> b != bundle);
      boolean waits =
          waiting.anyAt(other) && !(waiting.waits(bundle) && waiting.place(bundle) == other);
      if (lies || waits) {
        return false;
      }
    }
    return true;
  }

  private boolean isOnTop(int bundle) {
    if (waiting.waits(bundle)) {
      return true;
    }
    List<Integer> row = row(where(bundle));
    return row.get(row.size() - 1) == bundle;
  }

  private int where(int bundle) {
    return now.entrySet().stream()
        .filter(e -> e.getValue().contains(bundle))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  /**
   * Sets aside the top of the stack of which fewest are in the wrong place, or of the next one
   * where there is no place for it; false where there is none for any.
   */
  private boolean setAside(List<Integer> astray) {
    return astray.stream()
        .filter(b -> !waiting.waits(b) && isOnTop(b))
        .sorted(Comparator.comparingInt(this::turn).thenComparing(b -> b))
        .anyMatch(b -> setAside(b, s -> !avoids(b, s)) || setAside(b, s -> true));
  }

  private int turn(int bundle) {
    return attempt == 0 ? wrong(where(bundle)) : drawn(bundle, 0, 1 << 16);
  }

  private boolean avoids(int bundle, int spot) {
    return attempt > 0 && drawn(bundle, spot + 1, 3) == 0;
  }

  /** A number below {@code most} that looks drawn, always the same for the same attempt. */
  private int drawn(int bundle, int what, int most) {
    return new SplittableRandom(((long) attempt << 40) + ((long) bundle << 20) + what)
        .nextInt(most);
  }

  private int wrong(int spot) {
    return row(spot).size() - ready(spot);
  }

  private boolean setAside(int bundle, IntPredicate wanted) {
    int from = where(bundle);
    int spot = target(bundle);
    Optional<Integer> place =
        waiting.take(
            bundle,
            s -> driveM(bundle, from, s, spot),
            s -> wanted.test(s) && row(s).isEmpty() && isOpen(s, bundle) && loads.bear(bundle, s));
    if (place.isEmpty()) {
      return false;
    }
    loads.put(bundle, place.get());
    row(from).remove((Integer) bundle);
    Lifts.Lift machine = machine(bundle, from, place.get()).orElseThrow();
    lifts.add(new Unloading.Lift(StepKind.SET_ASIDE, bundle, from, place.get(), 1, machine));
    return true;
  }

  private Optional<Double> driveM(int bundle, int from, int place, int to) {
    Optional<Lifts.Lift> away = machine(bundle, from, place);
    Optional<Lifts.Lift> on = machine(bundle, place, to);
    return away.flatMap(a -> on.map(o -> a.driveM() + o.driveM()));
  }

  private Optional<Lifts.Lift> machine(int bundle, int from, int to) {
    Point start = board.centre(from);
    return board.lifts.move(
        board.bundles.get(bundle), board.massKg[bundle], start, board.centre(to));
  }
}
