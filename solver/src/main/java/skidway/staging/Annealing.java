package skidway.staging;

import io.micrometer.core.instrument.Metrics;
import io.micrometer.core.instrument.config.MeterFilter;
import java.util.List;
import java.util.stream.IntStream;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/**
 * Improves a staging by simulated annealing: worse plans are accepted now and then, less and less
 * often. Its length is a number of score calculations, so that the same seed gives the same plan on
 * any machine.
 */
final class Annealing {
  static {
    // Nobody reads the engine's own gauges, and it warns on the screen when two searches share one.
    Metrics.globalRegistry.config().meterFilter(MeterFilter.deny());
  }

  /** Starting temperature as a share of the cost of an average bundle. */
  private static final double WARMTH = 0.05;

  /** Told of every better plan. */
  interface Watcher {
    void better(int placed, long costMs);
  }

  private final StagingSolution.Ground ground;
  private final EnvironmentMode mode;

  Annealing(StagingSolution.Ground ground, EnvironmentMode mode) {
    this.ground = ground;
    this.mode = mode;
  }

  /** Returns the spot of each bundle in the best plan found. */
  int[] improve(int[] start, long seed, long calculations, Watcher watcher) {
    Board board = ground.board();
    if (board.spotCount() == 0 || board.bundleCount() == 0 || ground.stop().pressed()) {
      return start;
    }
    Occupancy before = ground.empty();
    before.restore(start);
    long temperature = 1 + (long) (WARMTH * before.costMs() / board.bundleCount());
    Solver<StagingSolution> solver =
        SolverFactory.<StagingSolution>create(config(seed, calculations, temperature))
            .buildSolver();
    solver.addEventListener(
        event -> {
          var score = (HardMediumSoftLongScore) event.getNewBestScore();
          watcher.better(board.bundleCount() + (int) score.mediumScore(), -score.softScore());
        });
    List<Integer> spots = IntStream.range(0, board.spotCount()).boxed().toList();
    return solver.solve(new StagingSolution(ground, spots, start)).spotOf();
  }

  private SolverConfig config(long seed, long calculations, long temperature) {
    LocalSearchPhaseConfig phase =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(Proposals.class))
            .withAcceptorConfig(
                new LocalSearchAcceptorConfig()
                    .withSimulatedAnnealingStartingTemperature(
                        "0hard/0medium/" + temperature + "soft"))
            .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    return new SolverConfig()
        .withSolutionClass(StagingSolution.class)
        .withEntityClasses(Placing.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig()
                .withIncrementalScoreCalculatorClass(StagingScore.class))
        .withEnvironmentMode(mode)
        .withRandomSeed(seed)
        .withTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit(calculations))
        .withPhases(phase);
  }
}
