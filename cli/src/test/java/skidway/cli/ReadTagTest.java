package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prints the tags of a demo job, changes the plan and holds old tags against it. */
class ReadTagTest {
  @TempDir private Path dir = Path.of("");
  private Path job = Path.of("");

  @BeforeEach
  void printTheFirstPlan() {
    job = StagedCabin.copyPrinted(dir);
  }

  private Shell ask(String... more) {
    String[] all = new String[more.length + 2];
    all[0] = "read-tag";
    all[1] = job.toString();
    System.arraycopy(more, 0, all, 2, more.length);
    return Shell.run(all);
  }

  /** Texts of all codes of a page, as the drawings' labels tell them to who cannot see them. */
  private List<String> tags(String page) throws IOException {
    return Pattern.compile("aria-label=\"Code: ([^\"]+)\"")
        .matcher(Files.readString(job.resolve("out").resolve(page)))
        .results()
        .map(r -> r.group(1).replace("; ", "\n"))
        .toList();
  }

  /** A second revision in which two stacks of the first have changed places. */
  private List<String> swapTwoStacks() throws IOException {
    String first = Files.readString(job.resolve("plans/001.json"));
    List<String> spots =
        tags("tags.html").stream()
            .map(t -> t.replaceAll("(?s).*\nspot (\\S+) .*", "$1"))
            .distinct()
            .limit(2)
            .toList();
    String a = "\"" + spots.get(0) + "\"";
    String b = "\"" + spots.get(1) + "\"";
    String second = first.replace(a, "\"?\"").replace(b, a).replace("\"?\"", b);
    Files.writeString(
        job.resolve("plans/002.json"), second.replace("\"revision\": 1", "\"revision\": 2"));
    return spots;
  }

  @Test
  void aFreshTagHolds() throws IOException {
    assertThat(tags("tags.html")).hasSize(18);
    for (String tag : tags("tags.html")) {
      Shell shell = ask(tag);
      assertThat(shell.code()).as(shell.out()).isEqualTo(ExitCode.FINE);
      assertThat(shell.out()).contains("of the newest plan, revision 1");
      if (!shell.out().contains("on end")) {
        assertThat(shell.out()).contains("tier", "points");
      }
    }
  }

  @Test
  void aTextComesFromAFileOrFromStandardInputToo() throws IOException {
    String tag = tags("tags.html").get(0);
    Path file = Files.writeString(dir.resolve("tag.txt"), tag);
    assertThat(ask("--file", file.toString()).code()).isEqualTo(ExitCode.FINE);
    assertThat(ask("--file", file.toString(), tag).code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ask("--file", dir.resolve("none").toString()).err()).contains("cannot be read");
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(tag.getBytes(StandardCharsets.UTF_8)));
      assertThat(ask().code()).isEqualTo(ExitCode.FINE);
    } finally {
      System.setIn(before);
    }
  }

  @Test
  void anOldTagIsHeldAgainstTheNewestPlan() throws IOException {
    List<String> old = tags("tags.html");
    List<String> spots = swapTwoStacks();
    String moved = old.get(0);
    Shell shell = ask(moved);
    assertThat(shell.code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(shell.out())
        .contains("revision 1; the newest plan is revision 2", "lies elsewhere", spots.get(1));
    String kept =
        old.stream()
            .filter(t -> spots.stream().noneMatch(s -> t.contains("spot " + s + " ")))
            .findFirst()
            .orElseThrow();
    assertThat(ask(kept).code()).isEqualTo(ExitCode.FINE);
    assertThat(ask(kept).out()).contains("Nothing on it has changed since; it may stay.");
    Files.delete(job.resolve("plans/001.json"));
    assertThat(ask(kept).code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(ask(kept).out()).contains("cannot be compared");
  }

  @Test
  void aTagOfALaterPlanIsNotOfThisFolder() throws IOException {
    swapTwoStacks();
    Shell.run("print", job.toString(), "--no-pdf");
    String tag = tags("tags.html").get(0);
    Files.delete(job.resolve("plans/002.json"));
    assertThat(ask(tag).code()).isEqualTo(ExitCode.BROKEN_RULE);
    assertThat(ask(tag).out()).contains("Is this folder old?");
  }

  @Test
  void whatIsNoTagOfThisJobIsSaidSo() throws IOException {
    String tag = tags("tags.html").get(0);
    for (String broken : List.of("", " ", "hello", tag.replace("check ", "check 0"), tag + "x")) {
      Shell shell = ask(broken);
      assertThat(shell.code()).as(broken).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(shell.out()).containsAnyOf("not the whole text", "no text to read");
    }
    Path head = job.resolve("job.json");
    Files.writeString(head, Files.readString(head).replaceFirst("Cabin", "Barn"));
    Path plan = job.resolve("plans/001.json");
    Files.writeString(plan, Files.readString(plan).replaceFirst("Cabin", "Barn"));
    assertThat(ask(tag).code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ask(tag).out()).contains("belongs to another job");
  }

  @Test
  void aBundleThatIsNotDeliveredIsUnknown() throws IOException {
    String tag =
        tags("tags.html").stream()
            .filter(t -> t.contains("bundle B09\n"))
            .findFirst()
            .orElseThrow();
    for (String file : List.of("bundles.csv", "pieces.csv")) {
      Path list = job.resolve(file);
      Files.writeString(list, Files.readString(list).replace("B09", "B99"));
    }
    Path plan = job.resolve("plans/001.json");
    Files.writeString(plan, Files.readString(plan).replace("\"B09\"", "\"B99\""));
    Shell shell = ask(tag);
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.out()).contains("Bundle B09 is not in this job's packing list");
  }

  @Test
  void onlyChangedTagsArePrintedAgain() throws IOException {
    List<String> spots = swapTwoStacks();
    long moved =
        tags("tags.html").stream()
            .filter(t -> spots.stream().anyMatch(s -> t.contains("spot " + s + " ")))
            .count();
    Shell print = Shell.run("print", job.toString(), "--changed-since", "1", "--no-pdf");
    assertThat(print.out()).contains("Tags to take off, both ends: " + moved / 2);
    assertThat(tags("tags-changed.html")).hasSize((int) moved);
    assertThat(tags("tags-changed.html")).allMatch(t -> t.contains("\nplan 2 "));
    assertThat(job.resolve("out/tags-changed.html"))
        .content()
        .contains("Tags to take off, since revision 1", spots.get(0) + ", tier 1 of ");
  }

  @Test
  void withoutAChangeThereAreNoTags() throws IOException {
    Shell.run("print", job.toString(), "--changed-since", "1", "--no-pdf");
    assertThat(tags("tags-changed.html")).isEmpty();
    assertThat(job.resolve("out/tags-changed.html")).content().contains("None.");
  }

  @Test
  void wrongOptionsAreTold() {
    for (String option : List.of("--tags=3", "--roll=4x6in", "--paper=a5", "--changed-since=7")) {
      Shell shell = Shell.run("print", job.toString(), option);
      assertThat(shell.code()).as(option).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(shell.err()).doesNotContain("at skidway.");
    }
  }

  @Test
  void paperFollowsTheJobsUnitsUnlessTold() {
    assertThat(job.resolve("out/tags.html")).content().contains("size: 210mm 297mm");
    Shell.run("print", job.toString(), "--paper", "letter", "--tags", "8", "--no-pdf");
    assertThat(job.resolve("out/tags.html")).content().contains("size: 215.9mm 279.4mm");
  }
}
