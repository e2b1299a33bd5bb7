package skidway.staging;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The fewest lifts that bring what lies on a small site to where it shall lie, by trying every
 * order of lifts, breadth first. Any top may be lifted, also one that lies right already; a bundle
 * is set aside at most once. Rules are asked of the board afresh, with no code of {@link
 * Rearranging}.
 */
final class FewestLifts {
  /**
   * @param rows what lies on each spot, bottom to top
   * @param waits who waits where
   * @param waited who ever waited
   * @param places where anybody ever waited
   */
  private record State(
      List<List<Integer>> rows,
      Map<Integer, Integer> waits,
      Set<Integer> waited,
      Set<Integer> places) {}

  private final Board board;
  private final Occupancy goal;
  private final List<List<Integer>> planned;
  private final double deckTotalKg;

  /**
   * @param deckTotalKg most that may lie on the deck at any time
   */
  FewestLifts(Occupancy goal, double deckTotalKg) {
    this.board = goal.board;
    this.goal = goal;
    this.deckTotalKg = deckTotalKg;
    planned =
        IntStream.range(0, board.spotCount())
            .mapToObj(s -> goal.stack(s).order().stream().filter(board::lies).toList())
            .toList();
  }

  /** None if no order of lifts gets there. */
  OptionalInt count() {
    State start = new State(start(), Map.of(), Set.of(), Set.of());
    Map<State, Integer> lifts = new HashMap<>(Map.of(start, 0));
    Deque<State> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      State state = open.remove();
      int soFar = lifts.getOrDefault(state, 0);
      if (state.rows().equals(planned) && state.waited().containsAll(onNewBearers())) {
        return OptionalInt.of(soFar);
      }
      for (State next : next(state)) {
        if (lifts.putIfAbsent(next, soFar + 1) == null) {
          open.add(next);
        }
      }
    }
    return OptionalInt.empty();
  }

  /** What comes to lie where it lay, but cannot stay there all the time. */
  private List<Integer> onNewBearers() {
    return IntStream.range(0, board.bundleCount())
        .filter(b -> board.lies(b) && goal.spotOf(b) == board.home[b])
        .filter(b -> planned.get(board.home[b]).indexOf(b) >= goal.stack(board.home[b]).untouched())
        .boxed()
        .toList();
  }

  private List<List<Integer>> start() {
    return IntStream.range(0, board.spotCount())
        .mapToObj(
            s ->
                IntStream.range(0, board.bundleCount())
                    .filter(b -> board.home[b] == s)
                    .boxed()
                    .sorted((a, b) -> Integer.compare(board.homeTier[a], board.homeTier[b]))
                    .toList())
        .toList();
  }

  private List<State> next(State state) {
    List<State> next = new ArrayList<>();
    for (List<Integer> row : state.rows()) {
      if (!row.isEmpty() && !board.stays[row.get(row.size() - 1)]) {
        lift(state, row.get(row.size() - 1), next);
      }
    }
    state.waits().values().forEach(bundle -> lift(state, bundle, next));
    return next;
  }

  private void lift(State state, int bundle, List<State> next) {
    boolean waits = state.waits().containsValue(bundle);
    List<List<Integer>> rows = new ArrayList<>();
    state.rows().forEach(row -> rows.add(row.stream().filter(b -> b != bundle).toList()));
    Map<Integer, Integer> waiting = new TreeMap<>(state.waits());
    waiting.values().remove(bundle);
    for (int s = 0; s < board.spotCount(); s++) {
      boolean clear = isClear(s, rows, waiting);
      if (clear && comesNext(bundle, s, rows) && !state.rows().get(s).contains(bundle)) {
        List<Integer> higher = new ArrayList<>(rows.get(s));
        higher.add(bundle);
        List<List<Integer>> with = new ArrayList<>(rows);
        with.set(s, List.copyOf(higher));
        add(
            new State(List.copyOf(with), Map.copyOf(waiting), state.waited(), state.places()),
            next);
      }
      boolean mayWait = !waits && !state.waited().contains(bundle);
      if (clear && mayWait && isWaitingPlace(s, state) && board.placeMs[bundle][s] >= 0) {
        Map<Integer, Integer> with = new TreeMap<>(waiting);
        with.put(s, bundle);
        State aside =
            new State(
                List.copyOf(rows),
                Map.copyOf(with),
                with(state.waited(), bundle),
                with(state.places(), s));
        add(aside, next);
      }
    }
  }

  private static Set<Integer> with(Set<Integer> some, int one) {
    Set<Integer> more = new TreeSet<>(some);
    more.add(one);
    return Set.copyOf(more);
  }

  private boolean comesNext(int bundle, int spot, List<List<Integer>> rows) {
    List<Integer> row = rows.get(spot);
    List<Integer> goalRow = planned.get(spot);
    return row.size() < goalRow.size()
        && goalRow.subList(0, row.size()).equals(row)
        && goalRow.get(row.size()) == bundle;
  }

  private boolean isClear(int spot, List<List<Integer>> rows, Map<Integer, Integer> waiting) {
    return !waiting.containsKey(spot)
        && IntStream.of(board.excludes[spot])
            .allMatch(other -> rows.get(other).isEmpty() && !waiting.containsKey(other));
  }

  /** Never used in the end, nor beside what is, nor beside another waiting place. */
  private boolean isWaitingPlace(int spot, State state) {
    Set<Integer> beside = new HashSet<>(state.places());
    IntStream.range(0, board.spotCount()).filter(s -> goal.count(s) > 0).forEach(beside::add);
    return state.rows().get(spot).isEmpty()
        && goal.count(spot) == 0
        && beside.stream().noneMatch(other -> board.exclude(spot, other));
  }

  private void add(State state, List<State> next) {
    double onDeckKg = 0;
    for (int s = 0; s < board.spotCount(); s++) {
      if (board.spots.get(s).zoneId().equals("deck")) {
        onDeckKg += state.rows().get(s).stream().mapToDouble(b -> board.massKg[b]).sum();
        Integer waits = state.waits().get(s);
        onDeckKg += waits == null ? 0 : board.massKg[waits];
      }
    }
    if (onDeckKg <= deckTotalKg + 1e-6) {
      next.add(state);
    }
  }
}
