package skidway.staging;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.optaplanner.core.config.solver.EnvironmentMode;

/**
 * Two searches at once from one start, each with its own dice and its own half of the calculations;
 * the better plan counts. Neither looks at the other before both have ended, so that the same seed
 * and effort give the same plan however fast either runs.
 */
final class TwoSearches {
  /** Searches shorter than this are over before a second one has warmed up. */
  static final long WORTH_TWO = 50_000;

  /** Any change of the seed will do; this one leaves small seeds far apart. */
  private static final long OTHER_DICE = 0x5DEECE66DL;

  private final StagingSolution.Ground ground;
  private final EnvironmentMode mode;

  TwoSearches(StagingSolution.Ground ground, EnvironmentMode mode) {
    this.ground = ground;
    this.mode = mode;
  }

  /**
   * Returns the spot of each bundle in the best plan found.
   *
   * @param watcher told of every better plan of the first search, and of the second's if it wins
   */
  int[] improve(int[] start, long seed, long calculations, Annealing.Watcher watcher) {
    if (calculations < WORTH_TWO) {
      return new Annealing(ground, mode).improve(start, seed, calculations, watcher);
    }
    long half = calculations / 2;
    StagingSolution.Ground apart = ground.apart(half);
    FutureTask<int[]> second =
        new FutureTask<>(
            () ->
                new Annealing(apart, mode)
                    .improve(start, otherDice(seed), half, (placed, costMs) -> {}));
    Thread thread = new Thread(second, "second search");
    thread.setDaemon(true);
    thread.start();
    int[] first = new Annealing(ground, mode).improve(start, seed, calculations - half, watcher);
    return better(first, result(second), watcher);
  }

  /** The second search's seed. */
  static long otherDice(long seed) {
    return seed ^ OTHER_DICE;
  }

  private static int[] result(FutureTask<int[]> search) {
    try {
      return search.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("The second search failed.", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted while waiting for the second search.", e);
    }
  }

  private int[] better(int[] first, int[] second, Annealing.Watcher watcher) {
    Occupancy one = ground.empty();
    one.restore(first);
    Occupancy other = ground.empty();
    other.restore(second);
    if (!other.isBetterThan(one)) {
      return first;
    }
    watcher.better(second.length - other.unplaced(), other.costMs());
    return second;
  }
}
