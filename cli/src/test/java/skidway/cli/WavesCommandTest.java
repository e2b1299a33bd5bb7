package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WavesCommandTest {
  /** Piles that cost little, so that some pay on so small a site. */
  private static final String CHEAP_PILES =
      "{\"layPiece\": \"2 s\", \"pileSetUp\": \"5 s\", \"pickTime\": \"5 s\"}";

  @TempDir private Path temp;

  @Test
  void wavesArePlannedPrintedAndWrittenBesideThePlan() throws IOException {
    Path job = plannedWithCheapPiles();
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

  /** The plan was priced with slower picking, which is the one thing found before. */
  @Test
  void theAuditJudgesThemWithThePlan() throws IOException {
    Path job = plannedWithCheapPiles();
    Shell.run("waves", job.toString());
    Shell sound = Shell.run("audit", job.toString());
    assertThat(sound.out())
        .contains("001.json with its waves: 1 findings", "  pickHeight: ")
        .containsPattern("P1\\.1 +stackHeight");
    Path file = job.resolve("plans/001-waves.json");
    Files.writeString(
        file, Files.readString(file).replaceFirst("\"heightM\": [0-9.]+", "\"heightM\": 0.1"));
    Shell spoilt = Shell.run("audit", job.toString());
    assertThat(spoilt.code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(spoilt.out()).contains("with its waves: 2 findings", "Pile P1.1 is told to be ");
  }

  @Test
  void thePacketHoldsThemAndThePullListNamesTheirPiles() throws IOException {
    Path job = plannedWithCheapPiles();
    Shell missing = Shell.run("print", job.toString(), "--only", "waves", "--no-pdf");
    assertThat(missing.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(missing.err()).contains("No waves are planned beside ", "run 'waves ");
    Shell.run("waves", job.toString());
    String waves = Files.readString(job.resolve("plans/001-waves.json"));
    Matcher onPile =
        Pattern.compile("\"mark\": \"([^\"]+)\",\\s+\"bundle\": \"([^\"]+)\"").matcher(waves);
    assertThat(onPile.find()).isTrue();
    Shell.run("print", job.toString(), "--only", "pull,waves", "--no-pdf");
    assertThat(Files.readString(job.resolve("out/packet-001-pull-waves.html")))
        .contains(
            "Onto pile P1.1",
            "href=\"#waves\"",
            "<td role=\"cell\" class=\"tier-of\" data-head=\"Tier\">pile");
    assertThat(Files.readString(job.resolve("out/pull.csv")))
        .containsPattern("," + onPile.group(1) + ",P1\\.\\d,pile,\\d+," + onPile.group(2) + ",");
  }

  @Test
  void wavesOfAPlanThatWasChangedAreNeitherAuditedNorPrinted() throws IOException {
    Path job = plannedWithCheapPiles();
    Shell.run("waves", job.toString());
    Path plan = job.resolve("plans/001.json");
    Files.writeString(plan, Files.readString(plan) + "\n");
    for (String command : new String[] {"audit", "print"}) {
      Shell shell = Shell.run(command, job.toString());
      assertThat(shell.code()).as(command).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(shell.err()).contains("001-waves.json:5:", "plan the waves of this plan anew");
    }
    assertThat(job.resolve("out/packet-001.html")).doesNotExist();
  }

  @Test
  void aJobWithoutAPlanIsToldAWayOut() throws IOException {
    Path job = DemoFolder.copy("cabin", temp);
    Shell shell = Shell.run("waves", job.toString());
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err()).contains("run 'stage");
    assertThat(job.resolve("out")).doesNotExist();
  }

  private Path plannedWithCheapPiles() throws IOException {
    Path job = planned();
    Path settings = job.resolve("job.json");
    Files.writeString(
        settings,
        Files.readString(settings).replace("\"settings\": {}", "\"settings\": " + CHEAP_PILES));
    return job;
  }

  private Path planned() throws IOException {
    Path job = DemoFolder.copy("cabin", temp);
    Files.createDirectories(job.resolve("plans"));
    Files.copy(DemoFolder.ALL.resolve("cabin/expected/plan.json"), job.resolve("plans/001.json"));
    return job;
  }
}
