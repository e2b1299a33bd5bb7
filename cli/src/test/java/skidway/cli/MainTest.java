package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  @TempDir private Path dir = Path.of("");

  private Path cabin() throws IOException {
    return DemoFolder.copy("cabin", dir);
  }

  private static Shell quickly(String command, Path job) {
    return command.equals("stage")
        ? Shell.run(command, job.toString(), "--effort", "2000")
        : Shell.run(command, job.toString());
  }

  @Test
  void withoutACommandTheUsageIsShown() {
    Shell shell = Shell.run();
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err()).contains("check", "stage", "audit", "print", "rules", "demo");
    assertThat(shell.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"fly", "check", "stage --effort=0 .", "stage --effort=much ."})
  void badUsageIsTold(String line) {
    Shell shell = Shell.run(line.split(" "));
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err()).isNotBlank().doesNotContain("at skidway.");
    assertThat(shell.out()).isEmpty();
  }

  @Test
  void printOnlyWritesWhatIsAskedFor() throws IOException {
    Path job = StagedCabin.copy(dir);
    Shell some = Shell.run("print", job.toString(), "--no-pdf", "--only", "pull,signs");
    assertThat(some.code()).isEqualTo(ExitCode.FINE);
    assertThat(some.out()).contains("Page with pull, signs", "pull.csv").doesNotContain("Tags:");
    assertThat(job.resolve("out/packet-001-pull-signs.html")).exists();
    assertThat(job.resolve("out/packet-001.html")).doesNotExist();
    assertThat(job.resolve("out/tags.html")).doesNotExist();
    Shell tags = Shell.run("print", job.toString(), "--no-pdf", "--only", "tags");
    assertThat(tags.out()).contains("Tags:").doesNotContain("Page with");
    Shell unknown = Shell.run("print", job.toString(), "--only", "posters");
    assertThat(unknown.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(unknown.err()).contains("posters", "set-out", "placards");
  }

  @Test
  void aJobGoesAllTheWayFromCheckToPrint() throws IOException {
    Path job = cabin();
    assertThat(quickly("check", job).code()).isEqualTo(ExitCode.FINE);
    Shell stage = quickly("stage", job);
    assertThat(stage.code()).isEqualTo(ExitCode.FINE);
    assertThat(stage.out())
        .contains("9 of 9 bundles placed", "this plan", "as it comes", "longest first")
        .contains("Tightest margins", "stackHeight", "replace neither")
        .contains("To have on site", "  bearers", "higher than 1.20 m: Y6");
    assertThat(job.resolve("plans/001.json")).exists();
    Shell audit = quickly("audit", job);
    assertThat(audit.code()).isEqualTo(ExitCode.FINE);
    assertThat(audit.out()).contains("nothing found");
    Shell csv = Shell.run("audit", job.toString(), "--all", "--csv");
    assertThat(csv.code()).isEqualTo(ExitCode.FINE);
    assertThat(csv.out()).startsWith("list,where,rule,").contains("tightest,Y6,stackHeight,hard,");
    Shell print = quickly("print", job);
    assertThat(print.code()).isEqualTo(ExitCode.FINE);
    assertThat(job.resolve("out/packet-001.html")).content().startsWith("<!DOCTYPE html>");
    assertThat(job.resolve("out/map-001.svg")).exists();
    assertThat(job.resolve("out/pull.csv")).content().startsWith("turn,wall,course,");
  }

  @Test
  void everyPlanIsARevisionOfItsOwn() throws IOException {
    Path job = StagedCabin.copy(dir);
    String first = Files.readString(job.resolve("plans/001.json"));
    quickly("stage", job);
    assertThat(job.resolve("plans/001.json")).hasContent(first);
    String second = Files.readString(job.resolve("plans/002.json"));
    assertThat(second).contains("\"revision\": 2");
    assertThat(withoutLabels(second)).isEqualTo(withoutLabels(first));
  }

  private static String withoutLabels(String plan) {
    return plan.replaceAll("\"(revision|previous)\": [^\n]*", "");
  }

  @Test
  void anEditedPlanThatBreaksARuleIsFound() throws IOException {
    Path job = StagedCabin.copy(dir);
    Path plan = job.resolve("plans/001.json");
    Files.writeString(plan, Files.readString(plan).replace("\"B01\"", "\"B02\""));
    Shell audit = quickly("audit", job);
    assertThat(audit.code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(audit.out()).contains("once", "placed");
    assertThat(quickly("print", job).code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(job.resolve("out/packet-001.html")).content().contains("Do not unload by this plan");
  }

  @Test
  void withoutAPlanThereIsNothingToAuditOrPrint() throws IOException {
    Path job = cabin();
    for (String command : new String[] {"audit", "print"}) {
      Shell shell = quickly(command, job);
      assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(shell.err()).contains("no plan yet", "Way out");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "stage", "audit", "print"})
  void badInputIsToldWithItsPlaceAndNothingIsWritten(String command) throws IOException {
    Path job = cabin();
    Path pieces = job.resolve("pieces.csv");
    String text = Files.readString(pieces);
    Files.writeString(pieces, text.replaceFirst("eastern white pine", "eastern white pin"));
    Shell shell = quickly(command, job);
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.err()).contains("pieces.csv:2:", "Way out", "nothing was written");
    assertThat(shell.out()).isEmpty();
    assertThat(job.resolve("plans")).doesNotExist();
    assertThat(job.resolve("out")).doesNotExist();
  }

  @Test
  void aBundleWithoutASpotIsListedWithItsRule() throws IOException {
    Path job = cabin();
    Path site = job.resolve("site.json");
    String text = Files.readString(site);
    Files.writeString(site, text.replaceAll("\"capacity\": *[^}]*}", "\"capacity\": 300}"));
    Shell shell = quickly("stage", job);
    assertThat(shell.code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(shell.out()).contains("Without a spot", "machineCapacity");
    assertThat(quickly("audit", job).code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(quickly("print", job).code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(job.resolve("out/packet-001.html")).content().doesNotContain("Do not unload");
  }

  @Test
  void theDemoLeavesEditedFilesAlone() throws IOException {
    Path job = Files.createDirectories(dir.resolve("l-house"));
    Files.writeString(job.resolve("about.txt"), "mine");
    Shell demo = Shell.run("demo", dir.toString(), "--effort", "2000");
    assertThat(demo.code()).isEqualTo(ExitCode.FINE);
    assertThat(job.resolve("about.txt")).hasContent("mine");
    assertThat(dir.resolve("cabin/pieces.csv")).exists();
  }
}
