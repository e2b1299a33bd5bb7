package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The search on published instances that may be measured but not copied: they are read from the
 * folder that {@code -Dskidway.bench.instances} names, and the tables tell what the search made of
 * them and nothing else. Run by the Maven profile {@code benchmark}; {@code
 * -Dskidway.bench.calculations} tells how long each search is.
 */
class InstancesBenchmark {
  private static final String CONFLICTS = "pslp-conflicts";
  private static final String ANY = "badly_placed, weights ignored";
  private static final String NO_HEAVIER = "badly_placed, heavier never on lighter";
  private static final String TRANSPORT = "slp-transport";

  private static final long CALCULATIONS =
      Long.getLong("skidway.bench.calculations", SearchLimits.DEFAULT.calculations());

  private Optional<InstanceFolder> named = Optional.empty();

  @BeforeEach
  void findTheFolder() {
    named = InstanceFolder.named();
    assumeTrue(named.isPresent(), InstanceFolder.HOW_TO);
  }

  @Test
  void badlyPlacedItemsOfLargeBays() throws IOException {
    InstanceFolder folder = named.orElseThrow();
    checkCounts(folder);
    List<Path> files = folder.files(CONFLICTS, ".json");
    BayFile.read(files.get(0)).search(1, CALCULATIONS);
    List<String> lines = new ArrayList<>();
    lines.add(
        "| instance | items | stacks | badly placed, the best known | processor time"
            + " | none on a lighter one: badly placed | the best known | processor time |");
    lines.add("|---|---|---|---|---|---|---|---|");
    for (Path file : files) {
      Bay bay = BayFile.read(file);
      lines.add(
          String.format(
              Locale.ROOT,
              "| %s | %d | %d of %d | %s | %s |",
              file.getFileName().toString().replace(".json", ""),
              bay.neededAt().size(),
              bay.stacks(),
              bay.tiers(),
              searched(bay.unweighted(), folder.optimum(instance(CONFLICTS, file), ANY)),
              searched(bay, folder.optimum(instance(CONFLICTS, file), NO_HEAVIER))));
    }
    BenchmarkPage.write("large bays", lines);
  }

  private static String searched(Bay bay, Optional<Double> optimum) {
    double beganS = ProcessorTime.nowS();
    int[] found = bay.search(1, CALCULATIONS);
    double tookS = ProcessorTime.nowS() - beganS;
    long left = Arrays.stream(found).filter(s -> s == Occupancy.NOWHERE).count();
    int bad = bay.badlyPlaced(found);
    if (left == 0) {
      assertThat(bay.holds(found)).isTrue();
      optimum.ifPresent(best -> assertThat((double) bad).isGreaterThanOrEqualTo(best));
    }
    return String.format(
        Locale.ROOT,
        "%s | %s | %.1f s",
        left == 0 ? bad : left + " left out",
        optimum.map(best -> String.format(Locale.ROOT, "%.0f", best)).orElse("not known"),
        tookS);
  }

  /** Plans of others count the same here. */
  private static void checkCounts(InstanceFolder folder) throws IOException {
    List<InstanceFolder.Check> checks = folder.checks(CONFLICTS);
    assertThat(checks).isNotEmpty();
    for (InstanceFolder.Check check : checks) {
      if (check.objective().startsWith("badly_placed")) {
        Bay bay = BayFile.read(folder.file(check.instance()));
        boolean heeded = check.objective().equals(NO_HEAVIER);
        assertCount(heeded ? bay : bay.unweighted(), check);
      }
    }
  }

  private static void assertCount(Bay bay, InstanceFolder.Check check) {
    int[] stackOf = check.stackOf().stream().mapToInt(s -> s).toArray();
    assertThat(bay.holds(stackOf)).as(check.instance()).isTrue();
    assertThat((double) bay.badlyPlaced(stackOf)).as(check.instance()).isEqualTo(check.value());
    Board board = bay.board();
    StackEvaluator evaluator = new StackEvaluator(board, Waits.NONE);
    Map<Integer, List<Integer>> stacks = new HashMap<>();
    for (int i = 0; i < stackOf.length; i++) {
      stacks.computeIfAbsent(stackOf[i], s -> new ArrayList<>()).add(i);
    }
    long rehandleMs = 0;
    for (List<Integer> stack : stacks.values()) {
      int[] set = stack.stream().mapToInt(i -> i).toArray();
      StackCost cost = evaluator.best(set, set.length, 0);
      assertThat(cost.legal()).as(check.instance()).isTrue();
      rehandleMs += cost.rehandleMs();
    }
    assertThat(rehandleMs)
        .as(check.instance())
        .isEqualTo(board.time.rehandleMs((int) check.value()));
  }

  @Test
  void costsOfCarryingItemsToStacks() throws IOException {
    InstanceFolder folder = named.orElseThrow();
    List<Path> files = folder.files(TRANSPORT, ".txt");
    cells(files.get(0), Optional.empty());
    List<String> lines = new ArrayList<>();
    lines.add(
        "| instance | items | stacks | search over the best known | processor time"
            + " | with bound, mending and closing | proven within | processor time, all |");
    lines.add("|---|---|---|---|---|---|---|---|");
    for (Path file : files) {
      lines.add(cells(file, folder.optimum(instance(TRANSPORT, file), "min transport cost")));
    }
    BenchmarkPage.write("carrying", lines);
  }

  private static String cells(Path file, Optional<Double> optimum) throws IOException {
    Transport problem = TransportFile.read(file);
    double beganS = ProcessorTime.nowS();
    Board board = problem.board();
    double boardS = ProcessorTime.nowS() - beganS;
    problem
        .misread(board)
        .ifPresent(
            what -> {
              throw new IllegalArgumentException(file + ": " + what + ".");
            });
    Transport.Result result = problem.solve(board, CALCULATIONS);
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d of %d | %s | %.1f s | %s | %.2f %% | %.1f s |",
        file.getFileName().toString().replace(".txt", ""),
        problem.items(),
        problem.stacks(),
        problem.tiers(),
        over(result.searched(), optimum),
        boardS + result.searchS(),
        over(result.mended(), optimum),
        100 * (result.mended() - result.bound()) / result.mended(),
        boardS + result.allS());
  }

  private static String over(double cost, Optional<Double> optimum) {
    optimum.ifPresent(best -> assertThat(cost).isGreaterThanOrEqualTo(best - 0.005));
    return optimum
        .map(best -> String.format(Locale.ROOT, "%.2f %%", 100 * Math.max(0, cost / best - 1)))
        .orElse(String.format(Locale.ROOT, "costs %.2f", cost));
  }

  private static String instance(String set, Path file) {
    return set + "/" + file.getFileName();
  }
}
