package skidway.staging;

import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import skidway.geometry.Walker;
import skidway.geometry.WalkingMap;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.site.Site;

/** What a search does a million times, and one walk. {@link HotPathBenchmark} writes the table. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class HotPath {
  /** Bundles of the invented job. */
  @Param({"20", "80"})
  public int bundles;

  private Staged staged = Staged.job(2);
  private int turn;

  /** A first plan, its highest stack, and a map of the site. */
  private record Staged(
      Board board, StackEvaluator evaluator, Occupancy occupancy, int highest, WalkingMap map) {
    static Staged job(int bundles) {
      Task task = Invented.job(bundles, 1);
      Board board = Survey.of(task);
      StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
      Occupancy occupancy = Boards.ground(board).empty();
      new RegretInsertion(occupancy).fill();
      int highest = 0;
      for (int s = 0; s < board.spotCount(); s++) {
        highest = occupancy.count(s) > occupancy.count(highest) ? s : highest;
      }
      return new Staged(board, evaluator, occupancy, highest, map(task));
    }

    private static WalkingMap map(Task task) {
      Walker walker =
          new Walker(
              task.settings().get(Setting.STEP_OVER), task.settings().get(Setting.CLIMB_FACTOR));
      return WalkingMap.of(task.site(), Set.of("W1", "W3"), walker);
    }

    int[] stack() {
      int[] set = new int[occupancy.count(highest)];
      for (int i = 0; i < set.length; i++) {
        set[i] = occupancy.member(highest, i);
      }
      return set;
    }
  }

  @Setup
  public void stage() {
    staged = Staged.job(bundles);
  }

  /** The best order of a stack that was never seen before. */
  @Benchmark
  public StackCost newStack() {
    int[] set = staged.stack();
    Pile pile = new Pile(staged.board(), set, set.length, staged.highest());
    return new Stacking(staged.board(), pile, Waits.FREE, Stacking.Heed.ALL).best();
  }

  /** The best order of a stack that was seen before. */
  @Benchmark
  public StackCost knownStack() {
    int[] set = staged.stack();
    return staged.evaluator().best(set, set.length, staged.highest());
  }

  /** One bundle after another goes to the spot where it is cheapest, and back. */
  @Benchmark
  public long thereAndBack() {
    Occupancy occupancy = staged.occupancy();
    int bundle = turn++ % bundles;
    int home = occupancy.spotOf(bundle);
    int there = staged.board().near[bundle][0];
    occupancy.take(bundle);
    occupancy.put(bundle, there);
    long costMs = occupancy.costMs();
    occupancy.take(bundle);
    occupancy.put(bundle, home);
    return costMs + occupancy.costMs();
  }

  /** The shortest walk across the site, two walls risen. */
  @Benchmark
  public double walk() {
    Site site = staged.board().task.site();
    Point middle = site.walls().get(0).at(1).plus(site.walls().get(2).at(1)).times(0.5);
    return staged.map().metres(new Point(1, 1), middle);
  }
}
