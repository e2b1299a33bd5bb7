package skidway.staging;

import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import skidway.erection.PullOrder;
import skidway.plan.Presence;
import skidway.plan.Proof;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/**
 * A published loading problem: items that all wait at once, in any order onto stacks of a few; each
 * costs something on each stack, and only some may lie on some others.
 *
 * <p>As a staging it is one bundle of one piece per item, and the walk to the piece's wall is as
 * long as the item's cost; no way where it is not allowed. All come on one load, lifting and moving
 * pieces aside cost nothing, so any order is as good as any other. Who may lie on whom is told by
 * length and width with no overhang.
 */
final class Transport {
  /** What a plan costs is counted in hundredths, as published costs are told. */
  private static final double MS_PER_COST = 100;

  private final int stacks;
  private final int tiers;
  private final boolean[][] mayLieOn;
  private final double[][] cost;
  private final double[][] sizes;

  /**
   * @param mayLieOn by upper and lower item
   * @param cost by item and stack, infinite where it is not allowed
   * @param sizes length and width of each item
   */
  Transport(int stacks, int tiers, boolean[][] mayLieOn, double[][] cost, double[][] sizes) {
    this.stacks = stacks;
    this.tiers = tiers;
    this.mayLieOn = mayLieOn;
    this.cost = cost;
    this.sizes = sizes;
  }

  int items() {
    return cost.length;
  }

  int stacks() {
    return stacks;
  }

  int tiers() {
    return tiers;
  }

  Board board() {
    Settings settings =
        Settings.defaults()
            .with(Setting.STACK_TIERS, tiers, "as published")
            .with(Setting.STACK_HEIGHT, tiers * 0.099, "as published, nothing but tiers counts")
            .with(Setting.END_OVERHANG, 0, "as published, none on a shorter one")
            .with(Setting.SIDE_OVERHANG, 0, "as published, none on a narrower one")
            .with(Setting.PICK_TIME, 0, "as published, picking costs nothing")
            .with(Setting.REHANDLE_PIECE, 0, "as published, nothing is in another's way")
            .with(Setting.MACHINE_LIFT, 0, "as published, any order is as good")
            .with(Setting.MACHINE_SPEED, 1e9, "as published, only walks cost");
    Spot[] spots =
        IntStream.range(0, stacks)
            .mapToObj(s -> spot("S" + s, "yard", 15, 9, 5, 5))
            .toArray(Spot[]::new);
    Task task = task(aSite().build(), settings, bundles());
    double[][] metres = metres(task);
    return Boards.board(task, Presence.of(task), new int[stacks][0], metres, spots);
  }

  /** Sizes are ranks, so that any fit on a spot and none is too slender. */
  private Bundle[] bundles() {
    return IntStream.range(0, items())
        .mapToObj(
            i ->
                aBundle("I" + i)
                    .load("L1", i + 1)
                    .size(1 + rank(0, i) / 1000.0, 1 + rank(1, i) / 1000.0, 0.01)
                    .piece("W1", i + 1, 1, 0.1)
                    .build())
        .toArray(Bundle[]::new);
  }

  private long rank(int dimension, int item) {
    double own = sizes[item][dimension];
    return Arrays.stream(sizes)
        .mapToDouble(s -> s[dimension])
        .distinct()
        .filter(s -> s < own)
        .count();
  }

  /** By stack and pull index. */
  private double[][] metres(Task task) {
    PullOrder order = task.pullOrder();
    CrewTime time = new CrewTime(task.settings());
    double[][] metres = new double[stacks][items()];
    for (int i = 0; i < items(); i++) {
      Piece piece = task.delivery().bundles().get(i).pieces().get(0);
      double msPerMetre = time.carryMs(time.carriers(piece), 1000) / 1000.0;
      for (int s = 0; s < stacks; s++) {
        metres[s][order.indexOf(piece)] = cost[i][s] * MS_PER_COST / msPerMetre;
      }
    }
    return metres;
  }

  /**
   * What of the problem the board tells otherwise: who may lie on whom, what an item costs on a
   * stack.
   */
  Optional<String> misread(Board board) {
    StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
    for (int i = 0; i < items(); i++) {
      for (int j = 0; j < items(); j++) {
        boolean may = i == j || evaluator.inOrder(new int[] {j, i}, 2, 0).legal();
        if (i != j && may != mayLieOn[i][j]) {
          return Optional.of(
              "item "
                  + (i + 1)
                  + (may ? " may" : " may not")
                  + " lie on item "
                  + (j + 1)
                  + " by their sizes");
        }
      }
      for (int s = 0; s < stacks; s++) {
        long ms =
            Double.isInfinite(cost[i][s]) ? Board.REFUSED : Math.round(cost[i][s] * MS_PER_COST);
        if (board.placeMs[i][s] != ms) {
          return Optional.of(
              "item "
                  + (i + 1)
                  + " costs "
                  + board.placeMs[i][s]
                  + " on stack "
                  + (s + 1)
                  + " instead of "
                  + ms);
        }
      }
    }
    return Optional.empty();
  }

  /**
   * What the search makes of it, and what bound, mending and closing make of that.
   *
   * @param bound what any plan costs at least
   * @param searchS seconds of processor time, bound and search together, until the search was done
   */
  record Result(double searched, double mended, double bound, double searchS, double allS) {}

  /** As a plan is made, but no place to wait is asked for. */
  Result solve(Board board, long calculations) {
    double beganS = ProcessorTime.nowS();
    StagingSolution.Ground ground =
        new StagingSolution.Ground(
            board,
            new StackEvaluator(board, Waits.FREE),
            List.of(),
            new StopButton(),
            new DrawBudget(calculations));
    SearchLimits limits = new SearchLimits(1, calculations);
    Proving proving = new Proving(board, limits, ground.stop());
    Occupancy first = ground.empty();
    new RegretInsertion(first).fill();
    proving.begin(first);
    Occupancy found = Boards.searched(ground, limits.seed(), calculations);
    double searched = cost(found.snapshot());
    double searchS = ProcessorTime.nowS() - beganS;
    Occupancy mended = proving.close(new Tribunal(found, ground, plan -> List.of(), plan -> true));
    double bound =
        proving.proof(mended, List.of()).map(Proof::lowestPersonS).orElse(0.0) * 1000 / MS_PER_COST;
    return new Result(
        searched, cost(mended.snapshot()), bound, searchS, ProcessorTime.nowS() - beganS);
  }

  /** What a plan costs, counted from the definition alone; infinite if it is not allowed. */
  double cost(int[] stackOf) {
    double sum = 0;
    for (int s = 0; s < stacks; s++) {
      int stack = s;
      List<Integer> members =
          IntStream.range(0, stackOf.length).filter(i -> stackOf[i] == stack).boxed().toList();
      if (members.size() > tiers || !canBeLaid(members)) {
        return Double.POSITIVE_INFINITY;
      }
      sum += members.stream().mapToDouble(i -> cost[i][stack]).sum();
    }
    return Arrays.stream(stackOf).anyMatch(s -> s == Occupancy.NOWHERE)
        ? Double.POSITIVE_INFINITY
        : sum;
  }

  private boolean canBeLaid(List<Integer> members) {
    return Boards.orders(members).stream()
        .anyMatch(
            order ->
                IntStream.range(1, order.size())
                    .allMatch(t -> mayLieOn[order.get(t)][order.get(t - 1)]));
  }
}
