package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands about sites and forms, from what is typed to what lies on the disk. */
final class SiteCommandTest {
  private static final String HOUSE =
      """
      units us
      name "Lake meadow"
      course 6"
      walls thick 8"
      wall W1 east 36'
      wall W2 north 28'
      wall W3 west 36'
      wall W4 south 28'
      yard south 10' off W1 full length wide 12' soil clay
      truck gate 30' off W1 middle long 30' wide 9'
      machine forklift
      stand M 50' off W1 middle
      chart 20' 7000 lb, 40' 4000 lb
      boundary around 30'
      """;

  @TempDir Path job;

  @Test
  void linesBecomeASiteAndADrawing() throws IOException {
    Files.writeString(job.resolve("site.txt"), HOUSE);
    Shell shell = Shell.run("site", job.toString());
    assertThat(shell.code()).as(shell.err()).isZero();
    assertThat(shell.out())
        .contains("The walls close exactly.", "Tape to check: Outside corner", "replace neither");
    assertThat(Files.readString(job.resolve("site.json"))).contains("\"name\": \"Lake meadow\"");
    assertThat(Files.readString(job.resolve("out/site.svg"))).contains("Site before any plan");
    assertThat(Files.readString(job.resolve("out/site.html")))
        .contains("Tape these before relying on the drawing", "45&#39;-7", "Before the first lift");
  }

  @Test
  void aWrongLineWritesNothing() throws IOException {
    Files.writeString(job.resolve("site.txt"), HOUSE.replace("W2 north", "W2 nort"));
    Shell shell = Shell.run("site", job.toString());
    assertThat(shell.code()).isEqualTo(2);
    assertThat(shell.err()).contains("site.txt:6:9: found \"nort\"", "nothing was written");
    assertThat(job.resolve("site.json")).doesNotExist();
    assertThat(job.resolve("out")).doesNotExist();
  }

  @Test
  void answersAreKeptAsTheyCome() throws IOException {
    Path file = job.resolve("site.txt");
    String said = ask("us\n?\nLake meadow\nback\nHill meadow\n\n6 furlongs\n6\"\n", false);
    assertThat(said)
        .contains("The name stands on every page.")
        .contains("Took the last answer back.")
        .contains("Found 6 as length, that is 6'-0\"");
    assertThat(Files.readString(file))
        .isEqualTo("units us\nname \"Hill meadow\"\nnorth up\ncourse 6\"\n");
    String rest =
        """
        8"
        east 36'
        north 28'
        west 36'
        close
        none
        none
        none
        10' off W1 full length wide 12' soil clay
        none
        none
        30' off W1 middle long 30' wide 9'
        none
        forklift
        50' off W1 middle
        none
        20' 7000 lb, 40' 4000 lb
        30'
        none
        """;
    assertThat(ask(rest, true)).contains("Going on after 4 answers.");
    assertThat(Shell.run("site", job.toString()).code()).isZero();
  }

  private String ask(String answers, boolean toTheEnd) {
    StringWriter said = new StringWriter();
    Screen screen = new Screen(new PrintWriter(said), new PrintWriter(said), false);
    Asking asking = new Asking(screen, new BufferedReader(new StringReader(answers)));
    assertThat(asking.ask(job, job.resolve("site.txt"))).as(said.toString()).isEqualTo(toTheEnd);
    return said.toString();
  }

  @Test
  void aDescriptionWrittenByHandIsNotAskedOn() throws IOException {
    Files.writeString(job.resolve("site.txt"), "# mine\n" + HOUSE);
    Shell shell = Shell.run("site", job.toString(), "--ask");
    assertThat(shell.code()).isEqualTo(2);
    assertThat(shell.err()).contains("it holds lines that no answer wrote");
    assertThat(Files.readString(job.resolve("site.txt"))).startsWith("# mine");
  }

  @ParameterizedTest
  @ValueSource(strings = {"job", "site", "plan"})
  void aFormIsPrinted(String name) {
    Shell shell = Shell.run("schema", name);
    assertThat(shell.code()).isZero();
    assertThat(shell.out())
        .contains("\"$schema\": \"https://json-schema.org/draft/2020-12/schema\"");
  }

  @Test
  void aFormThatIsNotThereIsTold() {
    Shell shell = Shell.run("schema", "pieces");
    assertThat(shell.code()).isEqualTo(2);
    assertThat(shell.err()).contains("there is one of job, site, plan");
  }
}
