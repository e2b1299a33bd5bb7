package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WavesCommandTest {
  /** Piles that cost little, so that some pay on so small a site. */
  private static final String CHEAP_PILES =
      "{\"layPiece\": \"2 s\", \"pileSetUp\": \"5 s\", \"pickTime\": \"5 s\"}";

  @TempDir private Path temp;

  @Test
  void wavesArePlannedPrintedAndWrittenBesideThePlan() throws IOException {
    Path job = planned();
    Path settings = job.resolve("job.json");
    Files.writeString(
        settings,
        Files.readString(settings).replace("\"settings\": {}", "\"settings\": " + CHEAP_PILES));
    Shell shell = Shell.run("waves", job.toString());
    assertThat(shell.code()).isEqualTo(ExitCode.FINE);
    assertThat(shell.out()).contains("Wave 1, when course ", "P1.1 on ", "Waves save ");
    String page = Files.readString(job.resolve("out/waves-001.html"));
    assertThat(page).contains("Onto pile P1.1").contains("Take from here");
    String first = Files.readString(job.resolve("plans/001-waves.json"));
    assertThat(first).contains("\"id\": \"P1.1\"");
    assertThat(Shell.run("waves", job.toString()).out()).isEqualTo(shell.out());
    assertThat(job.resolve("plans/001-waves.json")).hasContent(first);
  }

  @Test
  void aJobWithoutAPlanIsToldAWayOut() throws IOException {
    Path job = DemoFolder.copy("cabin", temp);
    Shell shell = Shell.run("waves", job.toString());
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err()).contains("run 'stage");
    assertThat(job.resolve("out")).doesNotExist();
  }

  private Path planned() throws IOException {
    Path job = DemoFolder.copy("cabin", temp);
    Files.createDirectories(job.resolve("plans"));
    Files.copy(DemoFolder.ALL.resolve("cabin/expected/plan.json"), job.resolve("plans/001.json"));
    return job;
  }
}
