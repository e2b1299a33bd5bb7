package skidway.staging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The page of measured figures; each benchmark rewrites its own section and leaves the others. */
public final class BenchmarkPage {
  private static final Path PAGE = Path.of("BENCHMARKS.md");

  private BenchmarkPage() {}

  /** Writes a section between its two marks, at the end of the page if it is not there yet. */
  public static void write(String section, List<String> lines) throws IOException {
    String page = Files.exists(PAGE) ? Files.readString(PAGE) : "";
    Files.writeString(PAGE, with(page, section, lines));
  }

  static String with(String page, String section, List<String> lines) {
    String begin = "<!-- " + section + " -->\n";
    String end = "<!-- end of " + section + " -->\n";
    String text = begin + String.join("\n", lines) + "\n" + end;
    int from = page.indexOf(begin);
    int to = page.indexOf(end);
    return from < 0 || to < from
        ? page + "\n" + text
        : page.substring(0, from) + text + page.substring(to + end.length());
  }
}
