package skidway.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The demo jobs in the working copy, and copies of them to try things on. */
final class DemoFolder {
  static final Path ALL = Path.of("..", "demo-data");

  private DemoFolder() {}

  /** Names of the demo jobs: whatever folders are there. */
  static List<String> names() throws IOException {
    try (Stream<Path> folders = Files.list(ALL)) {
      return folders
          .filter(f -> Files.exists(f.resolve("job.json")))
          .map(f -> f.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  /** Copies a job's input files into a folder. */
  static Path copy(String name, Path to) throws IOException {
    return copyOf(ALL.resolve(name), to.resolve(name));
  }

  /** Copies the files of a job and its plans. */
  static Path copyOf(Path from, Path to) throws IOException {
    Path job = Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, job.resolve(file.getFileName()));
      }
    }
    if (Files.isDirectory(from.resolve("plans"))) {
      copyOf(from.resolve("plans"), job.resolve("plans"));
    }
    return job;
  }
}
