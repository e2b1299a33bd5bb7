package skidway.staging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.plan.StepKind;
import skidway.site.Point;

/**
 * Works out the lifts that bring what lies on site to where it shall lie, before the next truck
 * comes: only the top of a stack is ever lifted, and only onto a stack that is ready for it. What
 * is in the way of all others is set aside and lifted on later.
 */
final class Rearranging {
  private final Board board;
  private final Occupancy occupancy;
  private final WaitingPlaces waiting;
  private final List<Unloading.Lift> lifts = new ArrayList<>();

  /** What lies on each spot now, bottom to top. */
  private final Map<Integer, List<Integer>> now = new HashMap<>();

  Rearranging(Occupancy occupancy, WaitingPlaces waiting) {
    this.board = occupancy.board;
    this.occupancy = occupancy;
    this.waiting = waiting;
    for (int b = 0; b < board.bundleCount(); b++) {
      if (board.lies(b) && !board.rack[board.home[b]]) {
        now.computeIfAbsent(board.home[b], s -> new ArrayList<>()).add(b);
      }
    }
    now.values().forEach(row -> row.sort((a, b) -> board.homeTier[a] - board.homeTier[b]));
  }

  /** The lifts, as far as they go. */
  Unloading.Sequence lifts() {
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
    while (same < planned.size() && same < row.size() && planned.get(same).equals(row.get(same))) {
      same++;
    }
    return same;
  }

  /** Brings a bundle to where it shall lie, if it can be lifted and its place is ready. */
  private boolean bringHome(int bundle) {
    int spot = target(bundle);
    int ready = ready(spot);
    List<Integer> planned = planned(spot);
    boolean next =
        row(spot).size() == ready && ready < planned.size() && planned.get(ready) == bundle;
    if (!next || !isOpen(spot) || !isOnTop(bundle)) {
      return false;
    }
    boolean waited = waiting.waits(bundle);
    int from = waited ? waiting.leave(bundle) : where(bundle);
    Optional<Lifts.Lift> machine = machine(bundle, from, spot);
    if (machine.isEmpty()) {
      return false;
    }
    row(from).remove((Integer) bundle);
    row(spot).add(bundle);
    StepKind kind = waited ? StepKind.LIFT_ON : StepKind.MOVE;
    lifts.add(new Unloading.Lift(kind, bundle, from, spot, ready + 1, machine.get()));
    return true;
  }

  /** Nothing lies or waits that excludes the spot. */
  private boolean isOpen(int spot) {
    for (int other : board.excludes[spot]) {
      if (!row(other).isEmpty() || waiting.anyAt(other)) {
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

  /** Sets aside the top of the stack that needs it least often; false where there is no place. */
  private boolean setAside(List<Integer> astray) {
    int best = Occupancy.NOWHERE;
    int fewest = Integer.MAX_VALUE;
    for (int b : astray) {
      if (waiting.waits(b) || !isOnTop(b)) {
        continue;
      }
      int spot = where(b);
      int wrong = row(spot).size() - ready(spot);
      if (wrong < fewest) {
        best = b;
        fewest = wrong;
      }
    }
    return best != Occupancy.NOWHERE && setAside(best);
  }

  private boolean setAside(int bundle) {
    int from = where(bundle);
    int spot = target(bundle);
    Optional<Integer> place =
        waiting.take(
            bundle, s -> driveM(bundle, from, s, spot), s -> row(s).isEmpty() && isOpen(s));
    if (place.isEmpty()) {
      return false;
    }
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
    Point start = waiting.centre(from);
    return board.lifts.move(
        board.bundles.get(bundle), board.massKg[bundle], start, waiting.centre(to));
  }
}
