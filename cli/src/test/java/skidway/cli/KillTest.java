package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.job.History;
import skidway.job.JobReader;
import skidway.job.PlanFiles;

/**
 * Kills programs that record or plan anew at random moments, some of them the moment a plan is
 * being written. The job opens after each, and holds every event and plan that was said to be
 * written and at most one more. {@code -Dskidway.kills=1000} kills more often.
 */
class KillTest {
  private static final int KILLS = Integer.getInteger("skidway.kills", 6);

  /** All revisions are read at each step, so a job must not grow without end. */
  private static final int KILLS_A_JOB = 20;

  private static final Pattern DONE = Pattern.compile("done (\\d+)\n");

  @TempDir private Path dir = Path.of("");
  private final Random random = new Random(20310610);

  /** What was written, and how often a program was killed that was just writing a plan. */
  private int events;

  private int plans;
  private int halfWritten;

  @Test
  void nothingThatWasAcknowledgedIsLost() throws Exception {
    Path job = dir;
    for (int kill = 0; kill < KILLS; kill++) {
      if (kill % KILLS_A_JOB == 0) {
        job = newJob(kill);
      }
      kill(job, kill);
      if ((kill + 1) % KILLS_A_JOB == 0 || kill + 1 == KILLS) {
        tell(kill + 1);
      }
    }
    assertThat(events).as("the programs did record").isGreaterThan(KILLS / 3);
  }

  /** Also on the way, so that a long run that is broken off has said something. */
  private void tell(int kills) {
    System.out.printf(
        "%d kills: %d events and %d plans written, %d plans half written%n",
        kills, events, plans, halfWritten);
  }

  private Path newJob(int kill) {
    Path job = StagedCabin.copy(dir.resolve(Integer.toString(kill)));
    assertThat(Shell.run("record", job.toString(), "late", "L1", "--until", "+1d").code()).isZero();
    return job;
  }

  /** Every third kill hits a program that plans anew; every other of these while it writes. */
  private void kill(Path job, int kill) throws Exception {
    History before = History.of(JobReader.read(job));
    boolean restages = kill % 3 == 2;
    int known = restages ? before.plans().size() : before.events().size();
    int said = Math.max(known, killed(job, restages, kill % 2 == 1, known + 1));
    History after = History.of(JobReader.read(job));
    assertThat(restages ? after.plans().size() : after.events().size())
        .as("after kill %d", kill)
        .isBetween(said, said + 1);
    assertThat(restages ? after.events() : after.plans())
        .as("what kill %d has nothing to do with", kill)
        .isEqualTo(restages ? before.events() : before.plans());
    assertThat(after.newest().orElseThrow().revision()).isEqualTo(after.plans().size());
    assertThat(Shell.run("status", job.toString()).code())
        .as("status after kill %d", kill)
        .isIn(ExitCode.FINE, ExitCode.BROKEN_RULE);
    halfWritten += restages && Files.exists(unfinished(job, after.plans().size() + 1)) ? 1 : 0;
    events += after.events().size() - before.events().size();
    plans += after.plans().size() - before.plans().size();
  }

  private static Path unfinished(Path job, int revision) {
    return job.resolve("plans").resolve(String.format(Locale.ROOT, ".%03d.json.new", revision));
  }

  /** The last number that a program said was done before it was killed; 0 for none. */
  private int killed(Path job, boolean restages, boolean atWriting, int next) throws Exception {
    Path out = dir.resolve("said.txt");
    String leftOver = stamp(unfinished(job, next));
    Process process =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:TieredStopAtLevel=1", // starts sooner
                    "-XX:+UseSerialGC", // takes less of the time of the program that looks on
                    "-cp",
                    System.getProperty("java.class.path"),
                    Endless.class.getName(),
                    job.toString(),
                    restages ? "restage" : "record",
                    Integer.toString(next)))
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    try {
      if (restages && atWriting) {
        waitForWriting(process, job, next, leftOver);
      } else {
        waitFor(process, out, restages ? "begins" : "done");
        TimeUnit.MILLISECONDS.sleep(random.nextInt(restages ? 3000 : 400));
      }
    } finally {
      process.destroyForcibly().waitFor();
    }
    String said = Files.readString(out);
    assertThat(said).startsWith("begins\n").doesNotContain("Exception");
    return DONE.matcher(said).results().mapToInt(r -> Integer.parseInt(r.group(1))).max().orElse(0);
  }

  private static void waitFor(Process process, Path out, String word)
      throws IOException, InterruptedException {
    while (process.isAlive() && !Files.readString(out).contains(word)) {
      TimeUnit.MILLISECONDS.sleep(5);
    }
  }

  /**
   * Looks without a pause: a plan is written within a millisecond or two. What an earlier kill left
   * half written is there from the start.
   */
  private void waitForWriting(Process process, Path job, int revision, String leftOver)
      throws Exception {
    while (process.isAlive()
        && stamp(unfinished(job, revision)).equals(leftOver)
        && PlanFiles.ofRevision(job, revision).isEmpty()) {
      Thread.onSpinWait();
    }
    TimeUnit.MICROSECONDS.sleep(random.nextInt(2000));
  }

  private static String stamp(Path file) throws IOException {
    try {
      return Files.getLastModifiedTime(file).toString();
    } catch (NoSuchFileException e) {
      return "none";
    }
  }
}
