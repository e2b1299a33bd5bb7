package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
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
    assertThat(site.out()).contains("then: skidway import " + job);
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
    Shell check = Shell.run("check", job.toString());
    assertThat(check.code()).isEqualTo(ExitCode.FINE);
    assertThat(check.out()).contains(": 1 load, 8 bundles, 80 pieces,");
  }

  /** Written by a later Skidway, or by a person for other people. */
  @Test
  void whatSkidwayDoesNotKnowStaysInEveryFileThatItWritesAnew() throws IOException {
    Path job = Files.createDirectories(dir.resolve("house"));
    Files.copy(LISTS.resolve("house-28x24.site.txt"), job.resolve("site.txt"));
    String[] take = {
      "import", job.toString(), LISTS.resolve("house-28x24.csv").toString(), "--load", "L1"
    };
    Shell.run("site", job.toString());
    Shell.run(with(take, "--arrival", "2031-05-06T08:00"));
    for (String file : List.of("job.json", "site.json", "imports.json")) {
      String text = Files.readString(job.resolve(file));
      Files.writeString(
          job.resolve(file), text.replaceFirst("\\{", "{\"ours\": {\"of\": \"" + file + "\"},"));
    }
    for (String file : List.of("pieces.csv", "bundles.csv", "loads.csv")) {
      String text = Files.readString(job.resolve(file));
      Files.writeString(job.resolve(file), text.replace("\n", ",ours\n"));
    }
    assertThat(Shell.run("site", job.toString()).code()).isEqualTo(ExitCode.FINE);
    Shell again = Shell.run(with(take, "--set", "moisture=20", "--replace"));
    assertThat(again.code()).as(again.err()).isEqualTo(ExitCode.FINE);
    assertThat(again.err()).contains("imports.json:", "an unknown field \"ours\"");
    assertThat(again.out()).contains("Written: ", "imports.json");
    for (String file : List.of("job.json", "site.json", "imports.json")) {
      assertThat(job.resolve(file)).content().contains("\"ours\"").contains(file);
    }
    for (String file : List.of("pieces.csv", "bundles.csv", "loads.csv")) {
      assertThat(Files.readAllLines(job.resolve(file)))
          .as(file)
          .allMatch(row -> row.endsWith(",ours"));
    }
  }

  private static String[] with(String[] args, String... more) {
    return Stream.of(args, more).flatMap(Stream::of).toArray(String[]::new);
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
