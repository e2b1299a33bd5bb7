package skidway.staging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.optaplanner.core.config.solver.EnvironmentMode;
import skidway.erection.PullOrder;
import skidway.geometry.Walker;
import skidway.plan.Presence;
import skidway.plan.Task;
import skidway.site.Spot;

/** Boards for tests: people walk straight, and only what a test names excludes each other. */
final class Boards {
  private Boards() {}

  static Board board(Task task, Spot... spots) {
    return board(task, new int[spots.length][0], spots);
  }

  static Board board(Task task, int[][] excludes, Spot... spots) {
    return board(task, Presence.of(task), excludes, spots);
  }

  static Board board(Task task, Presence presence, int[][] excludes, Spot... spots) {
    PullOrder order = task.pullOrder();
    double[][] metres = new double[spots.length][order.placements().size()];
    for (int s = 0; s < spots.length; s++) {
      for (int p = 0; p < metres[s].length; p++) {
        metres[s][p] = spots[s].access().distanceTo(order.placements().get(p).middle());
      }
    }
    return board(task, presence, excludes, metres, spots);
  }

  /**
   * @param metres walking distance by spot and pull index; infinite where there is no way
   */
  static Board board(
      Task task, Presence presence, int[][] excludes, double[][] metres, Spot... spots) {
    PullOrder order = task.pullOrder();
    double[] heightCapM = new double[spots.length];
    Arrays.fill(heightCapM, Double.POSITIVE_INFINITY);
    List<Spot> all = List.of(spots);
    HandUnloading hands = HandUnloading.of(task, all, new Walker(0.45, 4.4), order, presence);
    return new Board(task, all, heightCapM, excludes, metres, order, presence, hands);
  }

  static StagingSolution.Ground ground(Board board) {
    return new StagingSolution.Ground(
        board,
        new StackEvaluator(board, Waits.FREE),
        List.of(),
        new StopButton(),
        new DrawBudget(1_000_000));
  }

  /** The plan of one search of the length that is given: first plan, two searches, polish. */
  static Occupancy searched(StagingSolution.Ground ground, long seed, long calculations) {
    Occupancy occupancy = ground.empty();
    new RegretInsertion(occupancy).fill();
    occupancy.restore(
        new TwoSearches(ground, EnvironmentMode.REPRODUCIBLE)
            .improve(occupancy.snapshot(), seed, calculations, (placed, ms) -> {}));
    new RegretInsertion(occupancy).fill();
    new Polish(occupancy).run();
    return occupancy;
  }

  /** Every order of some numbers. */
  static List<List<Integer>> orders(List<Integer> items) {
    if (items.isEmpty()) {
      return List.of(List.of());
    }
    List<List<Integer>> all = new ArrayList<>();
    for (Integer first : items) {
      List<Integer> rest = new ArrayList<>(items);
      rest.remove(first);
      for (List<Integer> tail : orders(rest)) {
        List<Integer> order = new ArrayList<>(List.of(first));
        order.addAll(tail);
        all.add(order);
      }
    }
    return all;
  }
}
