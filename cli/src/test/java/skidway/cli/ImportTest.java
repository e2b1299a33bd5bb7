package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packing lists under {@code demo-data/lists}, each from file to a sound job. */
class ImportTest {
  private static final Path LISTS = DemoFolder.ALL.resolve("lists");

  @TempDir private Path dir = Path.of("");

  /** A demo job as it is before its first packing list. */
  private Path empty(String name) throws IOException {
    Path job = DemoFolder.copy(name, dir);
    Files.delete(job.resolve("pieces.csv"));
    Files.delete(job.resolve("bundles.csv"));
    return job;
  }

  private static Shell take(Path job, Path list, String... options) {
    List<String> args = new ArrayList<>(List.of("import", job.toString(), list.toString()));
    args.addAll(List.of(options));
    return Shell.run(args.toArray(String[]::new));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "l-house | feet-and-inches.csv | L1 | --set | moisture=19                          | 13"
            + " bundles, 126 pieces",
        "cabin   | millimetres.csv     | L1 | --call | Weymouthskiefer=eastern white pine  | 3"
            + " bundles, 36 pieces",
        "cabin   | counts.xlsx         | L2 | --replace | ''                               | 41"
            + " bundles, 64 pieces",
        "cabin   | marks.xlsx          | L1 | --replace | ''                               | 3"
            + " bundles, 36 pieces"
      })
  void aListNeedsOneCorrectionAtMost(
      String name, String list, String load, String option, String value, String result)
      throws IOException {
    Path job = empty(name);
    Shell shell =
        value.isEmpty()
            ? take(job, LISTS.resolve(list), "--load", load)
            : take(job, LISTS.resolve(list), "--load", load, option, value);
    assertThat(shell.err()).isEmpty();
    assertThat(shell.code()).isEqualTo(ExitCode.FINE);
    assertThat(shell.out()).contains("Load " + load + ": " + result, "The job is sound");
    Shell check = Shell.run("check", job.toString());
    assertThat(check.code()).isEqualTo(ExitCode.FINE);
    assertThat(check.err()).isEmpty();
    assertThat(check.out()).contains(result.replace(" bundles", " bundles"));
    assertThat(take(job, LISTS.resolve(list), "--load", load).out())
        .contains("as in \"list 1\"", "The job has these timbers already");
  }

  @Test
  void everyTimberIsAsInTheDemo() throws IOException {
    Path job = empty("cabin");
    take(job, LISTS.resolve("marks.xlsx"), "--load", "L1");
    List<String> lines = Files.readAllLines(job.resolve("pieces.csv"));
    assertThat(lines.get(0))
        .isEqualTo(
            "mark,wall,course,position,length,width,height,species,moisture,bundle,layer,mass");
    assertThat(lines.get(1))
        .isEqualTo("W3.C01.1,W3,1,1,330 cm,150 mm,200 mm,eastern white pine,18-25,B03,1,42.60 kg");
  }

  @Test
  void aDryRunWritesNothing() throws IOException {
    Path job = empty("cabin");
    Shell shell = take(job, LISTS.resolve("marks.xlsx"), "--load", "L1", "--dry-run");
    assertThat(shell.code()).isEqualTo(ExitCode.FINE);
    assertThat(job.resolve("pieces.csv")).doesNotExist();
    assertThat(job.resolve("imports.json")).doesNotExist();
    assertThat(job.resolve("plans")).doesNotExist();
  }

  @Test
  void aCorrectedListShowsDifferencesAndReplacesWhenTold() throws IOException {
    Path job = empty("cabin");
    String call = "Weymouthskiefer=eastern white pine";
    take(job, LISTS.resolve("millimetres.csv"), "--load", "L1", "--call", call);
    String before = Files.readString(job.resolve("pieces.csv"));
    Charset windows = Charset.forName("windows-1252");
    List<String> lines =
        new ArrayList<>(Files.readAllLines(LISTS.resolve("millimetres.csv"), windows));
    lines.set(2, lines.get(2).replace("3300,0", "3290,0"));
    String gone = lines.remove(4).split(";", -1)[1];
    Path corrected = Files.write(dir.resolve("corrected.csv"), lines, windows);
    Shell asks = take(job, corrected, "--load", "L1");
    assertThat(asks.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(asks.out())
        .contains("~ W3-01-1: length 3300.0 mm to 3290.0 mm", "- " + gone, "2 differences");
    assertThat(asks.err()).contains("--replace");
    assertThat(job.resolve("pieces.csv")).hasContent(before);
    assertThat(take(job, corrected, "--load", "L1", "--replace").code()).isEqualTo(ExitCode.FINE);
    assertThat(Files.readString(job.resolve("pieces.csv")))
        .contains("3290.0 mm")
        .doesNotContain(gone);
  }

  @Test
  void aColumnOfPeoplesOwnStaysWhateverTheyCallIt() throws IOException {
    Path job = empty("cabin");
    String[] options = {"--load", "L1", "--call", "Weymouthskiefer=eastern white pine"};
    take(job, LISTS.resolve("millimetres.csv"), options);
    List<String> rows = new ArrayList<>(Files.readAllLines(job.resolve("pieces.csv")));
    rows.replaceAll(row -> row + (row.startsWith("mark,") ? ",load" : ",by crane"));
    Files.write(job.resolve("pieces.csv"), rows);
    Charset windows = Charset.forName("windows-1252");
    String list = Files.readString(LISTS.resolve("millimetres.csv"), windows);
    Path corrected =
        Files.writeString(dir.resolve("own.csv"), list.replace("3300,0", "3290,0"), windows);
    assertThat(take(job, corrected, "--load", "L1", "--replace").code()).isEqualTo(ExitCode.FINE);
    assertThat(Files.readAllLines(job.resolve("pieces.csv")))
        .hasSameSizeAs(rows)
        .allMatch(row -> row.endsWith(",load") || row.endsWith(",by crane"));
  }

  @Test
  void aNearlyEmptyJobIsFilledAndToldWhatItLacks() throws IOException {
    Path job = empty("cabin");
    Files.delete(job.resolve("site.json"));
    Shell shell = take(job, LISTS.resolve("marks.xlsx"), "--load", "L1");
    assertThat(shell.code()).isEqualTo(ExitCode.FINE);
    assertThat(shell.out()).contains("none of this is the list's fault", "site.json");
    assertThat(job.resolve("pieces.csv")).exists();
  }

  @Test
  void aNewTruckNeedsItsArrival() throws IOException {
    Path job = empty("cabin");
    Shell without = take(job, LISTS.resolve("marks.xlsx"), "--load", "L9");
    assertThat(without.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(without.err()).contains("--arrival");
    assertThat(job.resolve("pieces.csv")).doesNotExist();
    Shell with =
        take(job, LISTS.resolve("marks.xlsx"), "--load", "L9", "--arrival", "2031-06-12T08:00");
    assertThat(with.code()).isEqualTo(ExitCode.FINE);
    assertThat(Files.readString(job.resolve("loads.csv"))).contains("L9,2031-06-12T08:00,track");
  }

  @Test
  void unknownWallsAreOneMessage() throws IOException {
    Path job = empty("cabin");
    Path list = dir.resolve("list.csv");
    Files.writeString(
        list,
        """
        Mark,Wall,Course,Length (m),Section (mm),Species,Moisture,Bundle
        a1,North,1,3.3,150x200,eastern white pine,19,B1
        a2,North,2,3.3,150x200,eastern white pine,19,B1
        a3,South,1,3.3,150x200,eastern white pine,19,B1
        """);
    Shell shell = take(job, list, "--load", "L1");
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err())
        .contains("list.csv:2:4: found walls North, South", "W1, W2, W3, W4", "1 problem;");
    assertThat(take(job, list, "--load", "L1", "--call", "North=W1", "--call", "South=W3").code())
        .isEqualTo(ExitCode.FINE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Mark,Wall,Course,Length (mm),Width,Height,Species,Moisture,Bundle#a1,W1,1,3300,6,8,eastern"
            + " white pine,19,B1 | bare numbers such as 6.0 in column E (width) | add --unit"
            + " width=mm | 2",
        "Mark,Wall,Course,Length (mm),Section (mm),Species,Moisture,Bundle | no timbers below the"
            + " header | look at the file | 1",
        "<html><body>Mark</body></html> | a web page | save it as XLSX or CSV | 1",
        "Nothing of a list | no header in UTF-8 text | look whether this is the right file | 1",
        "Mark,Wall,Course,Length (m),Section"
            + " (mm),Species,Moisture,Bundle#a1,W1,1,-3.3,150x200,eastern white pine,19,B1 |"
            + " list.csv:2:9: found \"-3.3\" as length | correct it | 1",
        "Mark,Wall,Course,Length (m),Section"
            + " (mm),Species,Moisture,Bundle#a1,W1,1,3300,150x200,eastern white pine,19,B1 |"
            + " list.csv:2:9: found 3300 m as length | check the figure and its unit | 1"
      })
  void aListThatMayMeanTwoThingsOrNothingIsOneMessageEach(
      String lines, String found, String wayOut, int problems) throws IOException {
    Path job = empty("cabin");
    Path list = Files.writeString(dir.resolve("list.csv"), lines.replace('#', '\n') + "\n");
    Shell shell = take(job, list, "--load", "L1");
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err()).contains(found, wayOut, problems + " problem");
    assertThat(job.resolve("pieces.csv")).doesNotExist();
  }

  @Test
  void whatTheJobRefusesIsToldAtTheListsCell() throws IOException {
    Path job = empty("cabin");
    Path list = dir.resolve("list.csv");
    Files.writeString(
        list,
        """
        Mark,Wall,Course,Length (m),Section (mm),Species,Moisture,Bundle
        a1,W1,1,3.3,150x200,eastern white pine,19,B1
        a1,W1,2,33,150x200,eastern white pine,0.19,B1
        """);
    Shell shell = take(job, list, "--load", "L1");
    assertThat(shell.err())
        .contains(
            "list.csv:3:1: found a second piece \"a1\"",
            "the first is in row 2",
            "list.csv:3:9: found 33 m",
            "list.csv:3:39: found \"0.19\" as moisture")
        .doesNotContain("pieces.csv");
  }

  @Test
  void aMarkThatIsAFormulaIsHarmlessInTheJob() throws IOException {
    Path job = empty("cabin");
    Path list = dir.resolve("list.csv");
    Files.writeString(
        list,
        """
        Mark,Wall,Course,Length (m),Section (mm),Species,Moisture,Bundle
        =1+1,W1,1,3.3,150x200,eastern white pine,19,B1
        """);
    assertThat(take(job, list, "--load", "L1").code()).isEqualTo(ExitCode.FINE);
    assertThat(Files.readString(job.resolve("pieces.csv"))).contains("\n'=1+1,W1");
  }
}
