package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published instances in two forms are read as they are meant; all files here are made up. */
class InstanceFilesTest {
  private static final String BAY =
      """
      {"n_items": 3, "n_stacks": 2, "capacity": 2,
       "departures": [2, 1, 3], "weights": [5, 7, 6]}
      """;

  /** The second item is as long as the first and narrower, the third shorter and as wide. */
  private static final String TRANSPORT =
      """
      3
      2
      2

      1 0 0
      1 1 0
      1 0 1

      1.50 20.00
      21474836.00 4.25
      3.00 3.00

      (0.0,0.0) (5.0,0.0)
      (0.0,9.0) (1.0,9.0) (2.0,9.0)
      (6.0,2.0) (6.0,1.5) (4.0,2.0)
      """;

  @TempDir Path folder;

  @Test
  void aBayWithWeights() throws IOException {
    Bay bay = BayFile.read(write("bay.json", BAY));
    assertThat(bay).isEqualTo(new Bay(2, 2, List.of(2, 1, 3), List.of(5, 7, 6)));
    int[] apart = {0, 1, 1};
    assertThat(bay.holds(apart)).isTrue();
    assertThat(bay.badlyPlaced(apart)).isEqualTo(1);
    int[] heavierOnLighter = {0, 0, 1};
    assertThat(bay.holds(heavierOnLighter)).isFalse();
    assertThat(bay.unweighted().holds(heavierOnLighter)).isTrue();
  }

  @Test
  void theBoardKnowsThatNoneLiesOnALighterOne() throws IOException {
    Bay bay = BayFile.read(write("bay.json", BAY));
    assertThat(isLegal(bay, 1, 2)).isTrue();
    assertThat(isLegal(bay, 0, 1)).isFalse();
    assertThat(isLegal(bay.unweighted(), 0, 1)).isTrue();
    assertThat(bay.holds(bay.search(1, 500))).isTrue();
  }

  private static boolean isLegal(Bay bay, int first, int later) {
    return new StackEvaluator(bay.board(), Waits.NONE).best(new int[] {first, later}, 2, 0).legal();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"capacity\": 2     | \"capacity\": 1    | 3 items do not fit into 2 stacks of 1.",
        "\"capacity\": 2     | \"capacity\": 40   | capacity has 40, more than the 12",
        "\"n_stacks\": 2,    | ''                 | n_stacks has nothing where a whole number",
        "[5, 7, 6]           | [5, 7]             | weights has 2 numbers where 3 numbers belong",
        "[2, 1, 3]           | [2, 0, 3]          | departures has 0 where a whole number from 1",
        "[2, 1, 3]           | [2, 1.5, 3]        | departures has 1.5 where a whole number",
        "[2, 1, 3]           | \"soon\"           | departures has no list where 3 numbers",
        "{\"n_items\"        | \"n_items\"        | not JSON",
      })
  void aBayThatIsNotOne(String right, String wrong, String told) throws IOException {
    Path file = write("bay.json", spoilt(BAY, right, wrong));
    assertThatThrownBy(() -> BayFile.read(file))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(file.toString())
        .hasMessageContaining(told);
  }

  @Test
  void costsOfCarrying() throws IOException {
    Transport problem = TransportFile.read(write("transport.txt", TRANSPORT));
    Board board = problem.board();
    assertThat(problem.misread(board)).isEmpty();
    assertThat(problem.cost(new int[] {0, 1, 0})).isEqualTo(1.5 + 4.25 + 3);
    assertThat(problem.cost(new int[] {0, 0, 0})).as("too many").isInfinite();
    assertThat(problem.cost(new int[] {1, 0, 1})).as("no way").isInfinite();
    assertThat(problem.cost(new int[] {0, 1, 1})).as("neither bears the other").isInfinite();
    assertThat(problem.cost(new int[] {0, 1, -1})).as("left out").isInfinite();
    Transport.Result result = problem.solve(board, 1000);
    assertThat(result.searched()).isEqualTo(1.5 + 4.25 + 3);
    assertThat(result.mended()).isEqualTo(1.5 + 4.25 + 3);
    assertThat(result.bound()).isBetween(8.7, 8.75);
  }

  @Test
  void aTableThatSizesDoNotTellIsNotMeasured() throws IOException {
    Transport problem =
        TransportFile.read(write("transport.txt", spoilt(TRANSPORT, "(4.0,2.0)", "(4.0,2.5)")));
    assertThat(problem.misread(problem.board()))
        .contains("item 3 may not lie on item 1 by their sizes");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 1 0                 | 1 1              | 6: 2 numbers where 3 0 or 1, one an item, belong.",
        "1 1 0                 | 1 1 2            | 6: 2.0 where 0 or 1 belongs.",
        "21474836.00 4.25      | x 4.25           | 10: \"x\" where a number belongs.",
        "21474836.00 4.25      | -1 4.25          | 10: -1.0 where a cost belongs, 0 or more.",
        "(6.0,1.5)             | 6.0,1.5          | 15: \"6.0,1.5\" where (x,y) belongs.",
        "(6.0,2.0) (6.0,1.5)   | (6.0,1.5)        | 15: 2 sizes where 3 belong, one an item.",
        "(4.0,2.0)             | '(4.0,2.0)\n9'   | 16: more than the format has.",
        "'(6.0,2.0) (6.0,1.5) (4.0,2.0)' | ''     | ends before the line that tells the length",
      })
  void aTransportThatIsNotOne(String right, String wrong, String told) throws IOException {
    Path file = write("transport.txt", spoilt(TRANSPORT, right, wrong));
    assertThatThrownBy(() -> TransportFile.read(file))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(file.toString())
        .hasMessageContaining(told);
  }

  @Test
  void whatIsKnownOfTheInstances() throws IOException {
    write("set/b.json", BAY);
    write("set/a.json", BAY);
    write("set/a.txt", BAY);
    write("optima.csv", "instance,objective,optimum,source\nset/a.json,\"bad, any\",3,made up\n");
    write("solutions.csv", "instance,objective,value,solution\nset/a.json,bad,1,1 2 2\n");
    write(
        "evaluator_checks.csv",
        "instance,assignment,badly_placed,pairs\nother/a.json,1,0,0\nset/b.json,2 1 1,1,4\n");
    InstanceFolder known = new InstanceFolder(folder);
    assertThat(known.files("set", ".json"))
        .containsExactly(folder.resolve("set/a.json"), folder.resolve("set/b.json"));
    assertThat(known.optimum("set/a.json", "bad, any")).contains(3.0);
    assertThat(known.optimum("set/b.json", "bad, any")).isEmpty();
    assertThat(known.checks("set"))
        .containsExactly(
            new InstanceFolder.Check("set/a.json", "bad", List.of(0, 1, 1), 1),
            new InstanceFolder.Check("set/b.json", "badly_placed", List.of(1, 0, 0), 1));
  }

  @Test
  void tablesAndFoldersThatAreNotThere() throws IOException {
    InstanceFolder known = new InstanceFolder(folder);
    assertThatThrownBy(() -> known.files("set", ".json"))
        .hasMessage("There is no folder " + folder.resolve("set") + ".");
    write("optima.csv", "instance,value\nset/a.json,3\n");
    assertThatThrownBy(() -> known.optimum("set/a.json", "bad"))
        .hasMessage(folder.resolve("optima.csv") + ": a row without objective.");
  }

  private Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private static String spoilt(String text, String right, String wrong) {
    assertThat(text).contains(right);
    return text.replace(right, wrong);
  }
}
