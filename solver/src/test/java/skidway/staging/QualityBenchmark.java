package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import skidway.plan.Baseline;

/**
 * The search against a general exact solver, the engine's own moves and what a crew does without a
 * plan, on invented jobs, within the same processor time. Run by the Maven profile {@code
 * benchmark}.
 */
class QualityBenchmark {
  private static final int[] SIZES = numbers("skidway.bench.sizes", "20,40,80,300");
  private static final int[] SECONDS = numbers("skidway.bench.seconds", "1,5");
  private static final int JOBS = Integer.getInteger("skidway.bench.jobs", 5);

  /** One run: how much of a job was left without a spot, and the cost of the rest. */
  private record Outcome(int unplaced, long costMs) {
    static Outcome of(Occupancy occupancy) {
      assertThat(occupancy.legal()).isTrue();
      return new Outcome(occupancy.unplaced(), occupancy.costMs());
    }

    boolean isBetterThan(Outcome other) {
      return unplaced != other.unplaced ? unplaced < other.unplaced : costMs < other.costMs;
    }
  }

  /** All runs of one contestant at one size and time. */
  private record Row(int bundles, String name, String time, List<Outcome> outcomes) {}

  private static int[] numbers(String property, String otherwise) {
    return Stream.of(System.getProperty(property, otherwise).split(","))
        .mapToInt(Integer::parseInt)
        .toArray();
  }

  @Test
  void writeTheTable() throws IOException {
    List<String> lines =
        new ArrayList<>(
            List.of(
                "| bundles | who | processor time | over the best of all: median | worst | left out |",
                "|---|---|---|---|---|---|"));
    for (int size : SIZES) {
      List<Row> rows = race(size);
      for (Row row : rows) {
        lines.add(line(row, rows));
      }
    }
    BenchmarkPage.write("quality", lines);
  }

  private static List<Row> race(int size) {
    List<Board> boards = new ArrayList<>();
    for (int job = 1; job <= JOBS; job++) {
      boards.add(Survey.of(Invented.job(size, job)));
    }
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(size, "crew, as it comes", "-", crew(boards, 0)));
    rows.add(new Row(size, "crew, longest first", "-", crew(boards, 1)));
    rows.add(
        new Row(size, "first plan", "-", boards.stream().map(QualityBenchmark::first).toList()));
    for (Contestant contestant : contestants(size)) {
      for (int seconds : SECONDS) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int job = 0; job < JOBS; job++) {
          outcomes.add(run(contestant, boards.get(job), job + 1, seconds));
        }
        rows.add(new Row(size, contestant.name(), seconds + " s", outcomes));
      }
    }
    return rows;
  }

  /**
   * The direct model grows with the square of the bundles and is left out where it is too large.
   */
  private static List<Contestant> contestants(int size) {
    List<Contestant> all =
        new ArrayList<>(List.of(new OwnStaging(), new OwnSearch(), new StackModel(8)));
    all.add(new StockMoves());
    if (size <= 80) {
      all.add(new DirectModel(8));
    }
    return all;
  }

  private static Occupancy started(Board board) {
    Occupancy occupancy = Boards.ground(board).empty();
    new RegretInsertion(occupancy).fill();
    return occupancy;
  }

  private static Outcome first(Board board) {
    return Outcome.of(started(board));
  }

  private static Outcome run(Contestant contestant, Board board, long seed, double processorS) {
    int[] start = started(board).snapshot();
    Occupancy occupancy = Boards.ground(board).empty();
    occupancy.restore(contestant.improve(board, start, seed, processorS));
    return Outcome.of(occupancy);
  }

  private static List<Outcome> crew(List<Board> boards, int which) {
    List<Outcome> outcomes = new ArrayList<>();
    for (Board board : boards) {
      Baseline crew = new Baselines(Boards.ground(board)).all().get(which);
      int unplaced = board.bundleCount() - crew.placed();
      outcomes.add(new Outcome(unplaced, Math.round(crew.effort().totalS() * 1000)));
    }
    return outcomes;
  }

  /** Jobs on which somebody placed more are told in the last column and not compared by cost. */
  private static String line(Row row, List<Row> rows) {
    List<Double> overs = new ArrayList<>();
    int leftOut = 0;
    for (int job = 0; job < JOBS; job++) {
      int at = job;
      Outcome best =
          rows.stream()
              .map(r -> r.outcomes().get(at))
              .reduce((a, b) -> b.isBetterThan(a) ? b : a)
              .orElseThrow();
      Outcome own = row.outcomes().get(job);
      leftOut += own.unplaced() - best.unplaced();
      if (own.unplaced() == best.unplaced()) {
        overs.add(100.0 * (own.costMs() - best.costMs()) / best.costMs());
      }
    }
    double[] sorted = overs.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    String median = sorted.length == 0 ? "-" : percent(sorted[sorted.length / 2]);
    String worst = sorted.length == 0 ? "-" : percent(Arrays.stream(sorted).max().orElseThrow());
    return String.format(
        Locale.ROOT,
        "| %d | %s | %s | %s | %s | %d |",
        row.bundles(),
        row.name(),
        row.time(),
        median,
        worst,
        leftOut);
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", share);
  }
}
