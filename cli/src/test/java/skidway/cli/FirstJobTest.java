package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a folder with nothing but a site told by tape, and the mill's list, to a sound job. */
class FirstJobTest {
  private static final Path LISTS = DemoFolder.ALL.resolve("lists");

  @TempDir private Path dir = Path.of("");

  @Test
  void aSiteAndAListMakeAJob() throws IOException {
    Path job = Files.createDirectories(dir.resolve("house"));
    Files.copy(LISTS.resolve("house-28x24.site.txt"), job.resolve("site.txt"));
    Shell site = Shell.run("site", job.toString());
    assertThat(site.code()).as(site.err()).isEqualTo(ExitCode.FINE);
    assertThat(Files.readString(job.resolve("job.json")))
        .contains("\"House on Larch Ridge\"", "\"us\"");
    Shell list =
        Shell.run(
            "import",
            job.toString(),
            LISTS.resolve("house-28x24.csv").toString(),
            "--load",
            "L1",
            "--arrival",
            "2031-05-06T08:00");
    assertThat(list.code()).as(list.err()).isEqualTo(ExitCode.FINE);
    assertThat(list.out()).contains("Load L1: 8 bundles, 80 pieces.", "The job is sound");
    assertThat(Shell.run("check", job.toString()).code()).isEqualTo(ExitCode.FINE);
  }

  @Test
  void aJobThatIsThereIsLeftAlone() throws IOException {
    Path job = Files.createDirectories(dir.resolve("house"));
    Files.copy(LISTS.resolve("house-28x24.site.txt"), job.resolve("site.txt"));
    String own = "{\"format\": 1, \"name\": \"Ours\", \"units\": \"us\"}";
    Files.writeString(job.resolve("job.json"), own);
    assertThat(Shell.run("site", job.toString()).code()).isEqualTo(ExitCode.FINE);
    assertThat(job.resolve("job.json")).hasContent(own);
  }
}
