package skidway.staging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import skidway.plan.Baseline;
import skidway.plan.Plan;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Bundle;

/**
 * Lays bundles where a plan for another turn of events has them, stack by stack in that order, and
 * writes this as a plan for a task of the same bundles: steps, reasons and hours are the task's
 * own.
 */
public final class Laying {
  private final Board board;
  private final Map<Integer, List<Integer>> orders = new HashMap<>();
  private boolean complete = true;

  private Laying(Board board) {
    this.board = board;
  }

  /**
   * The plan.
   *
   * @param task that begins on an empty site
   * @param like a plan of the same bundles on the same site
   * @param baselines of the task
   * @return none if a place is no candidate here, or a rule is broken, or the stacks cannot be
   *     built
   */
  public static Optional<Plan> of(Task task, Plan like, List<Baseline> baselines) {
    Laying laying = new Laying(Survey.of(task));
    like.stacks().forEach(laying::read);
    return laying.complete ? laying.written(like.search(), baselines) : Optional.empty();
  }

  private void read(Stack stack) {
    int spot = spot(stack.spot());
    List<Integer> order = stack.bundleIds().stream().map(this::bundle).toList();
    complete &= spot >= 0 && !order.contains(Occupancy.NOWHERE) && !orders.containsKey(spot);
    if (complete) {
      orders.put(spot, order);
    }
  }

  /** The same place by whatever name. */
  private int spot(Spot wanted) {
    return IntStream.range(0, board.spotCount())
        .filter(s -> board.spots.get(s).called(wanted.id()).equals(wanted))
        .findFirst()
        .orElse(Occupancy.NOWHERE);
  }

  private int bundle(String id) {
    List<String> ids = board.bundles.stream().map(Bundle::id).toList();
    return ids.indexOf(id);
  }

  private Optional<Plan> written(Search search, List<Baseline> baselines) {
    Map<Integer, List<Integer>> stacks = new HashMap<>(orders);
    stacks.keySet().removeIf(s -> board.spots.get(s).kind() == SpotKind.RACK);
    Occupancy occupancy =
        new Occupancy(board, new StackEvaluator(board, Waits.FREE, stacks), new ArrayList<>());
    orders.forEach((spot, order) -> order.forEach(bundle -> occupancy.put(bundle, spot)));
    Unloading.Sequence lifts = Unloading.of(occupancy);
    return occupancy.legal() && lifts.complete()
        ? Optional.of(new PlanWriter(occupancy, lifts.lifts()).plan(search, baselines))
        : Optional.empty();
  }
}
