package skidway.staging;

import java.util.List;
import org.optaplanner.core.config.solver.EnvironmentMode;
import skidway.plan.Plan;
import skidway.site.Spot;

/**
 * The whole of staging as the product runs it, search, bound and mending, with as much effort as
 * fits into the time. Its first plan is the one that all begin from.
 */
final class OwnStaging implements Contestant {
  /** Efforts of the runs that measure how fast staging is here; the second one is warmer. */
  private static final long[] MEASURED = {2_000, 20_000};

  @Override
  public String name() {
    return "Skidway";
  }

  @Override
  public int[] improve(Board board, int[] start, long seed, double processorS) {
    double endS = ProcessorTime.nowS() + processorS;
    StopButton stop = new StopButton();
    Runnable off = ProcessorTime.stopAfter(processorS, stop::press);
    Occupancy best = Boards.ground(board).empty();
    best.restore(start);
    double eachS = 0;
    for (long effort : MEASURED) {
      double beganS = ProcessorTime.nowS();
      best = better(best, run(board, seed, effort, stop));
      eachS = (ProcessorTime.nowS() - beganS) / effort;
    }
    long rest = Math.max(1000, (long) ((endS - ProcessorTime.nowS()) / eachS));
    best = better(best, run(board, seed, rest, stop));
    off.run();
    return best.snapshot();
  }

  private static Occupancy better(Occupancy one, Occupancy other) {
    return other.isBetterThan(one) ? other : one;
  }

  private static Occupancy run(Board board, long seed, long effort, StopButton stop) {
    Plan plan =
        Stager.stage(
            board,
            new SearchLimits(seed, effort),
            spots -> List.of(),
            (placed, of, hours) -> {},
            stop,
            EnvironmentMode.REPRODUCIBLE);
    Occupancy occupancy = Boards.ground(board).empty();
    plan.stacks()
        .forEach(
            stack ->
                stack
                    .bundleIds()
                    .forEach(id -> occupancy.put(number(board, id), spot(board, stack.spot()))));
    return occupancy;
  }

  private static int number(Board board, String bundleId) {
    for (int b = 0; b < board.bundleCount(); b++) {
      if (board.bundles.get(b).id().equals(bundleId)) {
        return b;
      }
    }
    throw new IllegalStateException("No bundle " + bundleId + ".");
  }

  /** The plan gives spots codes of its own. */
  private static int spot(Board board, Spot used) {
    for (int s = 0; s < board.spotCount(); s++) {
      Spot spot = board.spots.get(s);
      if (spot.footprint().equals(used.footprint())
          && spot.openSide() == used.openSide()
          && spot.kind() == used.kind()) {
        return s;
      }
    }
    throw new IllegalStateException("No candidate lies where " + used.id() + " does.");
  }
}
