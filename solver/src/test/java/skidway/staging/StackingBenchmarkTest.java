package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import skidway.timber.Bundle;

/**
 * Counts badly placed items of published stacking instances: with one piece per bundle, the pieces
 * to rehandle are the badly placed items. Source: resources/skidway/staging/pslp/SOURCE.txt.
 */
class StackingBenchmarkTest {
  static Stream<String> checks() throws IOException {
    return read("checks.csv").stream().skip(1);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void rehandlesAreTheBadlyPlacedItems(String check) throws IOException {
    String[] cells = check.split(",", -1);
    int[] neededAt = numbers(read(cells[0]).get(2));
    int[] stackOf = numbers(cells[1]);
    Bundle[] items = new Bundle[neededAt.length];
    for (int i = 0; i < items.length; i++) {
      items[i] = aBundle("I" + i).load("L1", i + 1).piece("W1", neededAt[i], 1, 3).build();
    }
    Board board = Boards.board(task(aSite().build(), items), spot("S", "yard", 15, 8, 5, 1));
    StackEvaluator evaluator = new StackEvaluator(board, Waits.FREE);
    Map<Integer, List<Integer>> stacks = new TreeMap<>();
    for (int i = 0; i < stackOf.length; i++) {
      stacks.computeIfAbsent(stackOf[i], s -> new ArrayList<>()).add(i);
    }
    long rehandleMs = 0;
    for (List<Integer> stack : stacks.values()) {
      int[] order = stack.stream().mapToInt(Integer::intValue).toArray();
      rehandleMs += evaluator.inOrder(order, order.length, 0).rehandleMs();
    }
    assertThat(rehandleMs).isEqualTo(board.time.rehandleMs(Integer.parseInt(cells[2])));
  }

  private static List<String> read(String name) throws IOException {
    try (var in = StackingBenchmarkTest.class.getResourceAsStream("pslp/" + name)) {
      assertThat(in).as(name).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  private static int[] numbers(String text) {
    return Stream.of(text.trim().split("\\s+")).mapToInt(Integer::parseInt).toArray();
  }
}
