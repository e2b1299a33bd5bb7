package skidway.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Carries the demo job folders in the jar and writes them out. */
final class DemoJobs {
  static final String L_HOUSE = "l-house";
  private static final List<String> CASES = List.of("cabin", L_HOUSE);
  private static final List<String> FILES =
      List.of("about.txt", "job.json", "site.json", "pieces.csv", "bundles.csv", "loads.csv");

  private DemoJobs() {}

  /** Writes every demo job into a folder of its own; files that exist are left as they are. */
  static List<Path> writeUnder(Path dir) {
    List<Path> folders = new ArrayList<>();
    try {
      for (String name : CASES) {
        Path folder = dir.resolve(name);
        Files.createDirectories(folder);
        for (String file : FILES) {
          write("/demo-data/" + name + "/" + file, folder.resolve(file));
        }
        folders.add(folder);
      }
    } catch (IOException e) {
      throw new BadUsage(
          "The demo jobs cannot be written under "
              + dir
              + ": "
              + e.getMessage()
              + ". Way out: name a folder that may be written to.");
    }
    return folders;
  }

  private static void write(String resource, Path to) throws IOException {
    if (Files.exists(to)) {
      return;
    }
    try (InputStream in = DemoJobs.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("The jar lacks " + resource);
      }
      Files.copy(in, to);
    }
  }
}
