package skidway.staging;

import java.util.List;
import java.util.stream.IntStream;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.SolverConfig;

/**
 * The same engine and the same score as the product's, but with the engine's own moves (change a
 * bundle's spot, swap two bundles) and its own default way of accepting (late acceptance).
 */
final class StockMoves implements Contestant {
  @Override
  public String name() {
    return "stock moves";
  }

  @Override
  public int[] improve(Board board, int[] start, long seed, double processorS) {
    StagingSolution.Ground ground =
        new StagingSolution.Ground(
            board,
            new StackEvaluator(board, Waits.FREE),
            List.of(),
            new StopButton(),
            new DrawBudget(1));
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(StagingSolution.class)
            .withEntityClasses(Placing.class)
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig()
                    .withIncrementalScoreCalculatorClass(StagingScore.class))
            .withRandomSeed(seed)
            .withPhases(new LocalSearchPhaseConfig());
    Solver<StagingSolution> solver = SolverFactory.<StagingSolution>create(config).buildSolver();
    List<Integer> spots = IntStream.range(0, board.spotCount()).boxed().toList();
    Runnable off = ProcessorTime.stopAfter(processorS, solver::terminateEarly);
    int[] found = solver.solve(new StagingSolution(ground, spots, start)).spotOf();
    off.run();
    return found;
  }
}
