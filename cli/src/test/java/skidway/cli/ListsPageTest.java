package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Does what {@code demo-data/lists/README.md} shows, in its own words, from each list to printed
 * pages. Only the search is shorter, and no PDF is made.
 */
class ListsPageTest {
  private static final Path LISTS = DemoFolder.ALL.resolve("lists");
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| `([^`]+)` \\| ([^|]+) \\|[^|]*\\| `skidway ([^`]+)` \\|$");
  private static final Pattern STEP = Pattern.compile("(?m)^       skidway (.+)$");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  /** Options that say which truck it is; all others correct how a list is read. */
  private static final Set<String> OF_THE_TRUCK = Set.of("--load", "--arrival", "--stand");

  @TempDir private Path dir = Path.of("");

  /** A row of the page's table. */
  record Shown(String list, String job, String command) {}

  /** Those for a demo job; the walk has the others. */
  static List<Shown> listsForDemoJobs() throws IOException {
    return lists().stream().filter(s -> !s.job().contains(" ")).toList();
  }

  private static List<Shown> lists() throws IOException {
    return ROW.matcher(page())
        .results()
        .map(m -> new Shown(m.group(1), m.group(2).strip(), m.group(3)))
        .toList();
  }

  private static String page() throws IOException {
    return Files.readString(LISTS.resolve("README.md"));
  }

  @Test
  void everyListIsShown() throws IOException {
    try (var files = Files.list(LISTS)) {
      List<String> lists =
          files
              .map(f -> f.getFileName().toString())
              .filter(f -> f.endsWith(".csv") || f.endsWith(".xlsx"))
              .toList();
      assertThat(lists().stream().map(Shown::list)).containsExactlyInAnyOrderElementsOf(lists);
    }
  }

  @ParameterizedTest
  @MethodSource("listsForDemoJobs")
  void aListGoesToPaperWithOneCorrectionAtMost(Shown shown) throws IOException {
    Path job = job(shown);
    List<String> command = words(shown.command());
    assertThat(corrections(command)).as(shown.command()).hasSizeLessThanOrEqualTo(1);
    Shell taken = run(command, "JOB", job);
    assertThat(taken.code()).as(taken.err()).isEqualTo(ExitCode.FINE);
    assertThat(taken.out()).contains("The job is sound");
    stagedAndPrinted(job);
  }

  private Path job(Shown shown) throws IOException {
    Path job = DemoFolder.copy(shown.job(), dir);
    Files.delete(job.resolve("pieces.csv"));
    Files.delete(job.resolve("bundles.csv"));
    return job;
  }

  private static void stagedAndPrinted(Path job) {
    Shell staged = Shell.run("stage", job.toString(), "--effort", "2000");
    assertThat(staged.code()).as(staged.err()).isEqualTo(ExitCode.FINE);
    Shell printed = Shell.run("print", job.toString(), "--no-pdf");
    assertThat(printed.code()).as(printed.err()).isEqualTo(ExitCode.FINE);
    assertThat(job.resolve("out/packet-001.html")).content().contains("<svg");
  }

  private static List<String> corrections(List<String> command) {
    return command.stream().filter(w -> w.startsWith("--") && !OF_THE_TRUCK.contains(w)).toList();
  }

  @Test
  void theWalkFromAnEmptyFolderLeadsToPaperAndAClaim() throws IOException {
    String page = page();
    Path house = Files.createDirectories(dir.resolve("house"));
    Files.writeString(house.resolve("site.txt"), siteOf(page));
    List<List<String>> steps =
        STEP.matcher(page).results().map((MatchResult m) -> words(m.group(1))).toList();
    assertThat(steps.stream().map(s -> s.get(0)))
        .containsExactly(
            "site", "import", "import", "check", "stage", "print", "receive", "receive", "receive");
    StringBuilder said = new StringBuilder();
    for (List<String> step : steps.subList(0, 7)) {
      Shell shell = run(step, "house", house);
      assertThat(shell.code()).as(step + shell.err()).isEqualTo(ExitCode.FINE);
      said.append(shell.out());
    }
    assertThat(said.toString())
        .contains("36'-10 1/2\"", "1,222 lb", "1,260 lb", "8 of 8 bundles", "4 stacks");
    Path other = DemoFolder.copyOf(house, dir.resolve("other"));
    assertThat(run(steps.get(7), "house", house).code()).isEqualTo(ExitCode.FINE);
    Shell claim = run(steps.get(8), "house", other);
    assertThat(claim.code()).as(claim.err()).isEqualTo(ExitCode.FINE);
    assertThat(other.resolve("out/claim-L1.txt")).content().contains("B03", "split, left end");
  }

  /** The site's lines between the page's two marks, without the page's indent. */
  private static String siteOf(String page) {
    String lines = page.substring(page.indexOf("<<'END'\n") + 8, page.indexOf("       END\n"));
    return lines.replaceAll("(?m)^       ", "");
  }

  private static List<String> words(String command) {
    return WORD.matcher(command)
        .results()
        .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
        .toList();
  }

  /** Runs a command of the page with its folders where they are here. */
  private static Shell run(List<String> command, String folder, Path job) {
    List<String> args = new ArrayList<>();
    for (String word : command) {
      boolean list = word.endsWith(".csv") || word.endsWith(".xlsx");
      args.add(
          word.equals(folder)
              ? job.toString()
              : list ? LISTS.resolve(Path.of(word).getFileName()).toString() : word);
    }
    switch (command.get(0)) {
      case "stage" -> args.addAll(List.of("--effort", "2000"));
      case "print" -> args.add("--no-pdf");
      default -> {}
    }
    return Shell.run(args.toArray(String[]::new));
  }
}
