package skidway.staging;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.bound.Harvest;
import skidway.bound.Harvest.Sheaf;

/**
 * A general exact solver on a model over whole stacks: of the sets of bundles on spots that a bound
 * leaves over some are chosen, so that every bundle is in one and no spot is in another's way. The
 * first half of the time raises the bound; the first staging is given as a hint.
 *
 * <p>For jobs that come at one moment; what stacks share is checked afterwards.
 */
final class StackModel implements Contestant {
  /** Of the time, for raising the bound. */
  private static final double RAISING = 0.5;

  /** Plans looked for are no more than this dearer than the bound. */
  private static final double SHARE = 0.01;

  private final ExactSolver exact;

  StackModel(int workers) {
    this.exact = new ExactSolver(workers);
  }

  @Override
  public String name() {
    return "exact solver over stacks";
  }

  @Override
  public int[] improve(Board board, int[] start, long seed, double processorS) {
    double beganS = ProcessorTime.nowS();
    Occupancy first = Boards.ground(board).empty();
    first.restore(start);
    Harvest harvest =
        Harvest.of(
            new BoundGround(board, false),
            board.moments,
            first.costMs(),
            SHARE,
            () -> ProcessorTime.nowS() > beganS + RAISING * processorS);
    double restS = processorS - (ProcessorTime.nowS() - beganS);
    return restS <= 0 ? start : new Model(board, start, harvest).solve(seed, restS);
  }

  private final class Model {
    private final Board board;
    private final int[] start;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder costMs = LinearExpr.newBuilder();
    private final Map<Sheaf, BoolVar> chosen = new HashMap<>();
    private final List<Sheaf> sheaves;
    private final List<List<Literal>> holding = new ArrayList<>();
    private final Map<Integer, List<Literal>> onSpot = new HashMap<>();

    Model(Board board, int[] start, Harvest harvest) {
      this.board = board;
      this.start = start;
      Set<Sheaf> first = stacksOf(start, harvest);
      Set<Sheaf> all = new HashSet<>(harvest.sheaves());
      all.addAll(first);
      sheaves =
          all.stream()
              .sorted(
                  Comparator.comparingInt(Sheaf::spot).thenComparing(s -> s.bundles().toString()))
              .toList();
      for (int b = 0; b < board.bundleCount(); b++) {
        holding.add(new ArrayList<>());
      }
      for (Sheaf sheaf : sheaves) {
        add(sheaf, first.contains(sheaf));
      }
      holding.forEach(model::addExactlyOne);
      onSpot.values().forEach(model::addAtMostOne);
      for (List<Integer> group : harvest.groups()) {
        List<Literal> together = new ArrayList<>();
        group.forEach(s -> together.addAll(onSpot.getOrDefault(s, List.of())));
        model.addAtMostOne(together);
      }
      model.minimize(costMs);
    }

    private Set<Sheaf> stacksOf(int[] spotOf, Harvest harvest) {
      Map<Integer, List<Integer>> stacks = new HashMap<>();
      for (int b = 0; b < spotOf.length; b++) {
        stacks.computeIfAbsent(spotOf[b], s -> new ArrayList<>()).add(b);
      }
      Set<Sheaf> sheaves = new HashSet<>();
      stacks.forEach((spot, bundles) -> sheaves.add(harvest.sheaf(spot, bundles)));
      return sheaves;
    }

    private void add(Sheaf sheaf, boolean first) {
      BoolVar taken = model.newBoolVar("");
      chosen.put(sheaf, taken);
      costMs.addTerm(taken, sheaf.costMs());
      model.addHint(taken, first);
      sheaf.bundles().forEach(b -> holding.get(b).add(taken));
      onSpot.computeIfAbsent(sheaf.spot(), s -> new ArrayList<>()).add(taken);
    }

    int[] solve(long seed, double processorS) {
      CpSolver solver = new CpSolver();
      solver.getParameters().setLinearizationLevel(2);
      if (!exact.solve(model, solver, seed, processorS)) {
        return start;
      }
      int[] found = new int[board.bundleCount()];
      for (Sheaf sheaf : sheaves) {
        if (solver.booleanValue(chosen.get(sheaf))) {
          sheaf.bundles().forEach(b -> found[b] = sheaf.spot());
        }
      }
      return found;
    }
  }
}
