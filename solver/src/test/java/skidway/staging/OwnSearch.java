package skidway.staging;

import java.util.List;
import org.optaplanner.core.config.solver.EnvironmentMode;

/** One search without bound and mending, with as many calculations as fit into the time. */
final class OwnSearch implements Contestant {
  /** Calculations of the run that measures how fast the search is here. */
  private static final long MEASURED = 20_000;

  @Override
  public String name() {
    return "search alone";
  }

  @Override
  public int[] improve(Board board, int[] start, long seed, double processorS) {
    double beganS = ProcessorTime.nowS();
    run(board, start, seed, MEASURED);
    double restS = processorS - (ProcessorTime.nowS() - beganS);
    beganS = ProcessorTime.nowS();
    run(board, start, seed, MEASURED);
    double eachS = (ProcessorTime.nowS() - beganS) / MEASURED;
    return run(board, start, seed, Math.max(1000, (long) ((restS - MEASURED * eachS) / eachS)));
  }

  private static int[] run(Board board, int[] start, long seed, long calculations) {
    StagingSolution.Ground ground =
        new StagingSolution.Ground(
            board,
            new StackEvaluator(board, Waits.FREE),
            List.of(),
            new StopButton(),
            new DrawBudget(calculations));
    Occupancy occupancy = ground.empty();
    occupancy.restore(
        new Annealing(ground, EnvironmentMode.REPRODUCIBLE)
            .improve(start, seed, calculations, (placed, ms) -> {}));
    new RegretInsertion(occupancy).fill();
    new Polish(occupancy).run();
    return occupancy.snapshot();
  }
}
