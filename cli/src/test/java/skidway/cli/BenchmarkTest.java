package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Measures whole runs of the built jar and prints the figures for DEVELOPERS.md; it asserts no
 * times. Opt-in: {@code mvn -B -DskipTests package}, then {@code mvn -B test -pl cli -am
 * -Dgroups=long -DexcludedGroups= -Dsurefire.failIfNoSpecifiedTests=false -Dtest=BenchmarkTest}.
 */
@Tag("long")
class BenchmarkTest {
  private static final Path JAR = Path.of("target", "skidway.jar");

  @Test
  void measure(@TempDir Path dir) throws IOException, InterruptedException {
    assertThat(JAR).as("build the jar first").exists();
    report("java -version, to compare", started(List.of("java", "-version")));
    report("check, l-house", run("check", DemoFolder.copy("l-house", dir).toString()));
    report("check, 20,000 pieces", run("check", manyPieces(dir, 20_000).toString()));
    for (String name : DemoFolder.names()) {
      Path job = DemoFolder.copy(name, Files.createDirectories(dir.resolve("whole")));
      report("stage, " + name, run("stage", job.toString()));
      report("audit, " + name, run("audit", job.toString()));
      report("print, " + name, run("print", job.toString()));
    }
    String large = LargeHouse.write(dir).toString();
    report("stage, 1,500 pieces in 60 bundles", run("stage", large));
    report("waves, 1,500 pieces in 60 bundles", run("waves", large));
    report("audit, 1,500 pieces in 60 bundles", run("audit", large));
  }

  private record Run(double firstLineS, double allS, long peakKb) {}

  /**
   * One run in a process of its own; the peak is read from the kernel while it lives, where it
   * tells.
   */
  private static Run run(String... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("java", "-jar", JAR.toString()));
    command.addAll(List.of(args));
    return started(command);
  }

  private static Run started(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    Path status = Path.of("/proc", Long.toString(process.pid()), "status");
    long peakKb = 0;
    double firstLineS = 0;
    List<String> said = new ArrayList<>();
    try (var lines = process.inputReader()) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        said.add(line);
        firstLineS = firstLineS == 0 ? seconds(start) : firstLineS;
        peakKb = Math.max(peakKb, peakKb(status));
      }
    }
    assertThat(process.waitFor())
        .as(String.join("\n", said))
        .isIn(ExitCode.FINE, ExitCode.BROKEN_RULE);
    return new Run(firstLineS, seconds(start), peakKb);
  }

  private static double seconds(long start) {
    return (System.nanoTime() - start) / 1e9;
  }

  /** The peak so far, or 0 where the kernel does not tell or the process has just ended. */
  private static long peakKb(Path status) {
    try (var lines = Files.lines(status)) {
      return lines
          .filter(line -> line.startsWith("VmHWM"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException | UncheckedIOException e) {
      return 0;
    }
  }

  private static void report(String what, Run run) {
    System.out.printf(
        Locale.ROOT,
        "| %s | first line %.2f s | all %.2f s | peak %d MB |%n",
        what,
        run.firstLineS(),
        run.allS(),
        run.peakKb() / 1024);
  }

  /** The cabin with so many more pieces: very many courses, bundles of ten. */
  private static Path manyPieces(Path dir, int count) throws IOException {
    Path job = DemoFolder.copy("cabin", Files.createDirectories(dir.resolve("many")));
    StringBuilder pieces = new StringBuilder();
    StringBuilder bundles = new StringBuilder("bundle,load,off_order,length,width,height\n");
    pieces.append("mark,wall,course,position,length,width,height,species,moisture,bundle,layer\n");
    for (int i = 0; i < count; i++) {
      int bundle = i / 10 + 1;
      if (i % 10 == 0) {
        bundles.append(
            String.format(Locale.ROOT, "N%d,L%d,%d,1.2,0.6,0.6%n", bundle, bundle % 2 + 1, bundle));
      }
      pieces.append(
          String.format(
              Locale.ROOT,
              "P%d,W%d,%d,%d,1,0.15,0.2,eastern white pine,22,N%d,%d%n",
              i,
              i / 6 % 4 + 1,
              i / 24 + 20,
              i % 6 + 1,
              bundle,
              i % 3 + 1));
    }
    Files.writeString(job.resolve("pieces.csv"), pieces);
    Files.writeString(job.resolve("bundles.csv"), bundles);
    return job;
  }
}
