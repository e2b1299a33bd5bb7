package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The cabin with its first plan: staged once, written out anew for every test that starts there.
 */
final class StagedCabin {
  private StagedCabin() {}

  /** A folder with revision 1, found by a short search. */
  static Path copy(Path to) {
    return write(Staged.FILES, to);
  }

  /** The same with what {@code print} makes of it, without PDFs. */
  static Path copyPrinted(Path to) {
    return write(Printed.FILES, to);
  }

  /** Each made when first asked for. */
  private static final class Staged {
    static final Map<String, byte[]> FILES =
        aside(
            folder -> {
              Path job = DemoFolder.copy("cabin", folder);
              return Shell.run("stage", job.toString(), "--effort", "2000");
            });
  }

  private static final class Printed {
    static final Map<String, byte[]> FILES =
        aside(folder -> Shell.run("print", copy(folder).toString(), "--no-pdf"));
  }

  private interface Work {
    Shell in(Path folder) throws IOException;
  }

  /** All files that some work leaves behind, by their path. */
  private static Map<String, byte[]> aside(Work work) {
    try {
      Path folder = Files.createTempDirectory("skidway");
      Shell done = work.in(folder);
      assertThat(done.code()).as(done.err()).isEqualTo(ExitCode.FINE);
      Map<String, byte[]> files = new TreeMap<>();
      for (Path path : deepestFirst(folder)) {
        if (Files.isRegularFile(path)) {
          files.put(folder.relativize(path).toString(), Files.readAllBytes(path));
        }
        Files.delete(path);
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> deepestFirst(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.sorted(Comparator.reverseOrder()).toList();
    }
  }

  private static Path write(Map<String, byte[]> files, Path to) {
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path path = to.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.write(path, file.getValue());
      }
      return to.resolve("cabin");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
