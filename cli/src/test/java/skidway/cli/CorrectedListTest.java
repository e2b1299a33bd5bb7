package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A list that comes again after things happened on site. */
class CorrectedListTest {
  @TempDir private Path dir = Path.of("");

  private static void fine(Path job, String... words) {
    String[] args = new String[words.length + 3];
    args[0] = "record";
    args[1] = job.toString();
    args[2] = "--by=Ann";
    System.arraycopy(words, 0, args, 3, words.length);
    Shell shell = Shell.run(args);
    assertThat(shell.code()).as(shell.err()).isEqualTo(ExitCode.FINE);
  }

  @Test
  void eventsStayAndWhatWasPulledBesideAVanishedPieceStaysInTheWall() throws IOException {
    Path job = StagedCabin.copy(dir);
    fine(job, "arrived", "L1");
    fine(job, "placed", "L1", "as", "planned");
    fine(job, "pulled", "--through", "W1-C01");
    String events = Files.readString(job.resolve("events.jsonl"));
    List<String> first =
        Files.readAllLines(job.resolve("pieces.csv")).stream()
            .filter(l -> l.startsWith("mark,") || l.matches(".*,B0[123],.*"))
            .filter(l -> !l.startsWith("W1-01-1,"))
            .toList();
    Path list = Files.write(dir.resolve("corrected.csv"), first);
    Shell asks = Shell.run("import", job.toString(), list.toString(), "--load", "L1");
    assertThat(asks.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(asks.out())
        .contains("1 difference from the job", "- W1-01-1")
        .contains("pulled through W1-C01 (2 pieces)) stays recorded, but no longer counts for")
        .contains("for W1-01-1.");
    Shell.run("import", job.toString(), list.toString(), "--load", "L1", "--replace");
    assertThat(Files.readString(job.resolve("events.jsonl"))).isEqualTo(events);
    Shell status = Shell.run("status", job.toString());
    assertThat(status.code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(status.err())
        .contains("Piece W1-01-1 is on no list any more; what was pulled with it counts")
        .contains("If the files are right as they are, undo");
    assertThat(status.out()).containsPattern("W1 +1 +1 +23 +W1-02-1");
  }
}
