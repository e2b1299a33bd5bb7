package skidway.staging;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.config.solver.EnvironmentMode;
import skidway.plan.Task;

/**
 * How processor time and memory grow with the number of bundles. Run by the Maven profile {@code
 * benchmark}; {@code -Dskidway.bench.growth=20,2000} chooses sizes, {@code -Dskidway.bench.search}
 * the processor seconds of the search.
 */
class GrowthBenchmark {
  private static final List<Integer> SIZES =
      Stream.of(System.getProperty("skidway.bench.growth", "20,40,80,300,1000,2000").split(","))
          .map(Integer::valueOf)
          .toList();

  private static final int SEARCH_S = Integer.getInteger("skidway.bench.search", 60);

  /** More than fit into the time on any machine. */
  private static final long ENDLESS = 1_000_000_000;

  @Test
  void writeTheTable() throws IOException {
    row(SIZES.get(0));
    List<String> lines = new ArrayList<>();
    lines.add(
        "| bundles | candidates | left out | board | first plan | it is over the last | within 5 % after"
            + " | within 1 % after | memory |");
    lines.add("|---|---|---|---|---|---|---|---|---|");
    for (int size : SIZES) {
      lines.add(row(size));
    }
    BenchmarkPage.write("growth", lines);
  }

  /** A plan's cost and when it was found. */
  private record Found(double atS, long costMs) {}

  private static String row(int bundles) {
    Task task = Invented.job(bundles, 1);
    double beganS = ProcessorTime.nowS();
    Board board = Survey.of(task);
    double boardS = ProcessorTime.nowS() - beganS;
    beganS = ProcessorTime.nowS();
    Occupancy first = Boards.ground(board).empty();
    new RegretInsertion(first).fill();
    double firstS = ProcessorTime.nowS() - beganS;
    List<Found> found = search(board, first);
    long lastMs = found.get(found.size() - 1).costMs();
    return String.format(
        Locale.ROOT,
        "| %d | %d | %d | %.1f s | %.1f s | %.1f %% | %.1f s | %.1f s | %d MB |",
        bundles,
        board.spotCount(),
        first.unplaced(),
        boardS,
        firstS,
        100.0 * (first.costMs() - lastMs) / lastMs,
        within(found, 1.05 * lastMs),
        within(found, 1.01 * lastMs),
        usedMb());
  }

  /** One search; each plan better than those before, the first one found at once. */
  private static List<Found> search(Board board, Occupancy first) {
    StopButton stop = new StopButton();
    Runnable off = ProcessorTime.stopAfter(SEARCH_S, stop::press);
    double beganS = ProcessorTime.nowS();
    List<Found> found = new ArrayList<>(List.of(new Found(0, first.costMs())));
    StagingSolution.Ground ground =
        new StagingSolution.Ground(
            board, new StackEvaluator(board, Waits.FREE), List.of(), stop, new DrawBudget(ENDLESS));
    new Annealing(ground, EnvironmentMode.REPRODUCIBLE)
        .improve(
            first.snapshot(),
            1,
            calculations(board, first),
            (placed, costMs) -> {
              if (placed == board.bundleCount() - first.unplaced()) {
                found.add(new Found(ProcessorTime.nowS() - beganS, costMs));
              }
            });
    off.run();
    return found;
  }

  /** As many as fit into the time: annealing must know how long it has. */
  private static long calculations(Board board, Occupancy first) {
    long few = 20_000;
    double beganS = ProcessorTime.nowS();
    new Annealing(Boards.ground(board), EnvironmentMode.REPRODUCIBLE)
        .improve(first.snapshot(), 1, few, (placed, costMs) -> {});
    return (long) (few * SEARCH_S / (ProcessorTime.nowS() - beganS));
  }

  private static double within(List<Found> found, double costMs) {
    return found.stream().filter(f -> f.costMs() <= costMs).findFirst().orElseThrow().atS();
  }

  private static long usedMb() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
  }
}
