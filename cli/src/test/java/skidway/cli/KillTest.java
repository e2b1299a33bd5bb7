package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.job.EventsFile;
import skidway.job.JobReader;

/**
 * Kills recording programs at random moments; the job opens after each, and holds every event that
 * was said to be recorded and at most one more. {@code -Dskidway.kills=1000} kills more often.
 */
class KillTest {
  private static final int KILLS = Integer.getInteger("skidway.kills", 6);
  private static final Pattern SAID = Pattern.compile("recorded (\\d+)\n");

  @TempDir private Path dir = Path.of("");

  /** Records one event after the other until it is killed, and says each that is acknowledged. */
  static final class Endless {
    private Endless() {}

    public static void main(String[] args) {
      ProcessHandle test = ProcessHandle.current().parent().orElseThrow();
      for (int seq = Integer.parseInt(args[1]); test.isAlive(); seq++) {
        String word = seq % 2 == 1 ? "missing" : "found";
        Shell shell = Shell.run("record", args[0], word, "B09", "--by", "Ann");
        if (shell.code() != ExitCode.FINE) {
          throw new IllegalStateException(shell.err());
        }
        System.out.print("recorded " + seq + "\n");
        System.out.flush();
      }
    }
  }

  @Test
  void nothingThatWasAcknowledgedIsLost() throws Exception {
    Random random = new Random(20310610);
    Path job = DemoFolder.copy("cabin", dir);
    Shell.run("stage", job.toString(), "--effort", "2000");
    int known = 0;
    int written = 0;
    for (int kill = 1; kill <= KILLS; kill++) {
      int said = Math.max(known, killed(job, known + 1, random.nextInt(400)));
      int there = EventsFile.read(JobReader.read(job)).events().size();
      assertThat(there).as("after kill %d", kill).isBetween(said, said + 1);
      written += there - known;
      known = there;
    }
    assertThat(written).as("the programs did record").isGreaterThan(KILLS / 2);
  }

  /** The last event that a program said was recorded before it was killed; 0 for none. */
  private int killed(Path job, int next, int waitMs) throws IOException, InterruptedException {
    Path out = dir.resolve("said.txt");
    Process process =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    Endless.class.getName(),
                    job.toString(),
                    Integer.toString(next)))
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    try {
      while (process.isAlive() && Files.size(out) == 0) {
        TimeUnit.MILLISECONDS.sleep(5);
      }
      TimeUnit.MILLISECONDS.sleep(waitMs);
    } finally {
      process.destroyForcibly().waitFor();
    }
    String said = Files.readString(out);
    assertThat(said).startsWith("recorded ").doesNotContain("Exception");
    return SAID.matcher(said).results().mapToInt(r -> Integer.parseInt(r.group(1))).max().orElse(0);
  }
}
