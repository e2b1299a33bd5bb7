package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.staging.StopButton;

/** What is expected of a load, what is counted, what is claimed. */
class ReceiveTest {
  @TempDir private Path dir = Path.of("");
  private Path job = Path.of("");

  @BeforeEach
  void copy() {
    job = StagedCabin.copy(dir);
  }

  private Shell receive(String... words) {
    List<String> args = new ArrayList<>(List.of("receive", job.toString()));
    args.addAll(List.of(words));
    args.addAll(List.of("--by=Ann", "--no-pdf"));
    return run(args);
  }

  private Shell record(String... words) {
    List<String> args = new ArrayList<>(List.of("record", job.toString(), "--by=Ann"));
    args.addAll(List.of(words));
    return run(args);
  }

  private static Shell run(List<String> args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Screen screen = new Screen(new PrintWriter(out), new PrintWriter(err), false);
    Clock clock = Clock.fixed(Instant.parse("2031-06-10T08:05:00Z"), ZoneOffset.UTC);
    int code = Main.run(screen, new StopButton(), clock, args.toArray(String[]::new));
    return new Shell(code, out.toString(), err.toString());
  }

  private String done(String... words) {
    Shell shell = receive(words);
    assertThat(shell.code()).as(shell.err()).isEqualTo(ExitCode.FINE);
    return shell.out();
  }

  private String refused(String... words) throws IOException {
    Path events = job.resolve("events.jsonl");
    String before = Files.exists(events) ? Files.readString(events) : "";
    Shell shell = receive(words);
    assertThat(shell.code()).as(shell.out()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err()).contains("othing was").doesNotContain("at skid");
    assertThat(Files.exists(events) ? Files.readString(events) : "").isEqualTo(before);
    return shell.err();
  }

  private String out(String name) throws IOException {
    return Files.readString(job.resolve("out").resolve(name));
  }

  /** The sheet that was written, with one cell filled in for each named row. */
  private Path filled(String everywhere, String... rowAndTick) throws IOException {
    done("L1", "--pieces");
    List<String> lines = new ArrayList<>();
    for (String line : out("receive-L1.csv").lines().toList()) {
      String changed = line;
      for (int i = 0; i < rowAndTick.length; i += 2) {
        changed =
            line.startsWith(rowAndTick[i] + ",,")
                ? line.replace(rowAndTick[i] + ",,", rowAndTick[i] + "," + rowAndTick[i + 1])
                : changed;
      }
      boolean bundle = line.matches("L1,B\\d+,,,.*");
      lines.add(
          changed.equals(line) && bundle
              ? line.replace(",,,,", ",," + everywhere + ",,")
              : changed);
    }
    return Files.write(dir.resolve("ticked.csv"), lines);
  }

  @Test
  void whatIsExpectedIsASheetToTick() throws IOException {
    assertThat(done("L1"))
        .containsPattern("1  B03 +14 +609 kg")
        .contains("receive-L1.html", "receive-L1.csv", "Figures help to plan");
    assertThat(out("receive-L1.html"))
        .contains("Count from the ground", "Driver", "Came, but is on no list", ">B03<")
        .doesNotContain("W3-01-1");
    assertThat(out("receive-L1.csv"))
        .startsWith("load,bundle,piece,there,note,")
        .contains("L1,B03,,,,14,3.30 m")
        .doesNotContain("W3-01-1");
    done("L1", "--pieces");
    assertThat(out("receive-L1.html")).contains("W3-01-1");
    assertThat(job.resolve("events.jsonl")).doesNotExist();
  }

  @Test
  void whatWasCountedBecomesEventsAndAClaim() throws IOException {
    String said =
        done(
            "L1",
            "--missing=B03",
            "--damaged=W3-02-1",
            "--note",
            "W3-02-1=split, left end",
            "--extra",
            "B99 =3 timbers");
    assertThat(said)
        .contains("arrived L1", "missing B03", "damaged W3-02-1 (split, left end)", "undo 1-4")
        .contains("extra B99 on L1 (=3 timbers)", "3 to claim");
    assertThat(out("claim-L1.txt"))
        .contains("Missing: 1 bundle with 14 pieces.", "W3-01-1: 3.30 m (10'-10\")")
        .contains("at most 609 kg (1,342 lb)", "split, left end", "B99", "by Ann");
    assertThat(out("claim-L1.csv").lines().toList())
        .hasSize(17)
        .contains("L1,extra,B99,,,,,,,,,,,,,,,,'=3 timbers,2031-06-10T08:05,Ann")
        .anyMatch(l -> l.startsWith("L1,missing,B03,B03,yes,W3-01-1,W3,1,1,eastern white pine,3.3"))
        .anyMatch(l -> l.contains(",\"split, left end\","));
    assertThat(Shell.run("status", job.toString()).out())
        .contains("Missing: B03", "extra B99 on L1 (=3 timbers)");
    record("found", "B03");
    done("L1");
    assertThat(out("claim-L1.txt")).contains("Missing: nothing.", "Damaged: 1 single piece.");
  }

  @Test
  void aFilledInSheetSaysTheSame() throws IOException {
    Path sheet = filled("yes", "L1,B03,", "no,gone", "L1,B01,W3-02-1", "damaged,split");
    Files.writeString(sheet, "L1,B99,,extra,3 timbers\r\n", StandardOpenOption.APPEND);
    String said = done("L1", sheet.toString());
    assertThat(said)
        .contains("1  2031-06-10 08:05  Ann  arrived L1", "missing B03 (gone)")
        .contains("damaged W3-02-1 (split)", "extra B99 on L1 (3 timbers)");
    assertThat(refused("L1", sheet.toString()))
        .contains("B03 is recorded missing already", "W3-02-1 is recorded damaged already")
        .contains("The extra B99 is recorded already");
  }

  @Test
  void aSheetThatSpreadsheetsSavedOtherwiseIsRead() throws IOException {
    Path sheet = filled("YES");
    Files.writeString(sheet, Files.readString(sheet).replace(',', ';').replace("yes", "ok"));
    assertThat(done("L1", sheet.toString())).contains("arrived L1", "nothing to claim");
    assertThat(out("claim-L1.txt")).contains("All that was expected is recorded as there.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          L1,B02, | maybe | ticked.csv:17:9: found "maybe" as there | yes, no, damaged, extra
          L1,B02, | '' | nothing ticked for bundle B02 | look whether it is there
          L1,B02, | yes,wet | a note "wet" beside "yes" | tick it damaged
          L1,B02, | extra,more | ticked.csv:17:4: found an extra "B02" | tick it yes, no or damaged
          L1,B03,W3-01-1 | no, | '' | ''
          """)
  void whatASheetLacksIsToldAtItsCell(String row, String tick, String found, String wayOut)
      throws IOException {
    Path sheet = filled("yes", row.strip(), tick);
    if (found.isEmpty()) {
      assertThat(done("L1", sheet.toString())).contains("missing W3-01-1");
      return;
    }
    assertThat(refused("L1", sheet.toString())).contains(found, wayOut);
  }

  @Test
  void piecesOfABundleThatIsNotThereAreNotThere() throws IOException {
    Path sheet = filled("yes", "L1,B03,", "no,", "L1,B03,W3-01-1", "yes,");
    assertThat(refused("L1", sheet.toString()))
        .contains("\"yes\" for piece \"W3-01-1\"", "ticked no as a whole", "ticked.csv:3:");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          L9 --complete | no load "L9" (did you mean | its loads are L1, L2
          L1 --missing=B77 | no bundle or piece "B77" | Way out: name a bundle
          L1 --missing=B09 | B09 is of load L2, not of load L1 | Way out: count it with its own
          L1 --missing=B03 --damaged=B03 | B03 is said to be missing and damaged | say one of them
          L1 --missing=B03,W3-01-1 | Piece W3-01-1 lies in bundle B03 | as a whole
          L1 --complete --missing=B03 | --complete says that nothing is missing | leave it out
          L1 --note=B03=wet | neither said to be missing nor damaged | name it there too
          L1 --extra=B99 | --extra B99 does not say what it is | Way out
          L1 x.csv --complete | in a sheet or on the command line | leave one of them out
          L1 x.csv | x.csv: found no such file | Way out
          """)
  void whatCannotBeMeantIsRefused(String words, String message, String wayOut) throws IOException {
    assertThat(refused(words.split(" "))).contains(message, wayOut);
    assertThat(job.resolve("events.jsonl")).doesNotExist();
  }

  @Test
  void aLoadComesOnce() throws IOException {
    done("L1", "--complete");
    assertThat(refused("L1", "--complete"))
        .contains("Load L1 arrived already, at 2031-06-10 08:05");
    assertThat(done("L1", "--damaged=B02")).doesNotContain("arrived").contains("damaged B02");
    assertThat(refused("L1", "--missing=B02")).contains("B02 is recorded damaged already");
  }
}
