package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import skidway.paper.SeenPdf;

/**
 * Takes every demo job all the way with the defaults and compares all that is said and written with
 * what is kept in its {@code expected} folder. It runs under a Turkish locale, where careless upper
 * and lower case or decimal commas would show. After a change run with {@code
 * -Dskidway.update=true} and read the difference.
 */
class GoldenTest {
  static List<String> jobs() throws IOException {
    return DemoFolder.names();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everythingIsAsExpected(String name, @TempDir Path dir) throws IOException {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag("tr-TR"));
    try {
      Path job = DemoFolder.copy(name, dir);
      for (String command : List.of("check", "stage", "audit", "print")) {
        Shell shell = Shell.run(command, job.toString());
        assertThat(shell.code()).as(shell.err()).isEqualTo(ExitCode.FINE);
        compare(name, command + ".txt", shell.out().replace(job.toString(), "JOB"));
      }
      compare(name, "plan.json", Files.readString(job.resolve("plans/001.json")));
      compare(name, "map.svg", Files.readString(job.resolve("out/map-001.svg")));
      compare(name, "packet.html", Files.readString(job.resolve("out/packet-001.html")));
      compare(name, "pull.csv", Files.readString(job.resolve("out/pull.csv")));
      compare(name, "packet-pdf.txt", seen(job.resolve("out/packet-001.pdf")));
      compare(name, "tags-pdf.txt", seen(job.resolve("out/tags.pdf")));
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String seen(Path pdf) throws IOException {
    SeenPdf seen = SeenPdf.of(Files.readAllBytes(pdf));
    return "Pages: " + seen.pages().size() + "\n\n" + seen.text();
  }

  private static void compare(String job, String file, String actual) throws IOException {
    Path expected = DemoFolder.ALL.resolve(job).resolve("expected").resolve(file);
    if (Boolean.getBoolean("skidway.update")) {
      Files.createDirectories(expected.getParent());
      Files.writeString(expected, actual);
    }
    assertThat(expected).as("run with -Dskidway.update=true to write it").exists();
    assertThat(actual).isEqualTo(Files.readString(expected));
  }
}
