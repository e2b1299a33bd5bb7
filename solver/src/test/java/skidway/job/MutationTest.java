package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.plan.Task;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

/** Whatever a file is changed into, it is read or refused with problems: nothing else comes out. */
final class MutationTest {
  private static final int TRIES = 300;
  private static final List<String> ODD =
      List.of(
          "NaN",
          "-1",
          "1e999",
          "-0.0",
          "\"",
          "\"\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ";",
          "\t",
          "\r",
          "\n",
          "null",
          "true",
          "'",
          "0",
          "99999999999999999999",
          "\u0000",
          "\u00e9",
          "\ud83e\udeb5",
          "4,5",
          "%",
          "W1",
          "B01",
          "\\u",
          "3 stone",
          "\u2032",
          "\ufffd");

  @TempDir Path temp;

  @ParameterizedTest
  @ValueSource(strings = {"job.json", "site.json", "pieces.csv", "bundles.csv", "loads.csv"})
  void ofAnInputFile(String file) {
    JobFolder folder = JobFolder.full(temp);
    Random random = new Random(file.hashCode());
    int refused = 0;
    for (int i = 0; i < TRIES; i++) {
      folder.write(file, mutated(folder.text(file), random));
      try {
        assertThat(JobReader.read(temp).task().site().walls()).isNotEmpty();
      } catch (BadInput e) {
        refused++;
        check(e);
      }
    }
    assertThat(refused).isBetween(TRIES / 4, TRIES);
  }

  @Test
  void ofAPlanFile() throws IOException {
    Task task = Tasks.task(SiteBuilder.aSite().build());
    Path file = PlanFiles.write(temp, SamplePlans.exact(1));
    String text = Files.readString(file);
    Random random = new Random(11);
    int refused = 0;
    for (int i = 0; i < TRIES; i++) {
      Files.write(file, mutated(text, random));
      try {
        assertThat(PlanFiles.read(file, task).jobName()).isNotNull();
      } catch (BadInput e) {
        refused++;
        check(e);
      }
    }
    assertThat(refused).isBetween(TRIES / 4, TRIES);
  }

  private static void check(BadInput e) {
    assertThat(e.problems()).isNotEmpty().hasSizeLessThanOrEqualTo(Problems.SHOWN);
    for (Problem p : e.problems().subList(0, Math.min(20, e.problems().size()))) {
      assertThat(p.text()).contains(": found ").contains(". Way out: ").hasSizeLessThan(1200);
      assertThat(p.picture()).startsWith(p.text());
      assertThat(p.line()).isNotNegative();
    }
  }

  /** One to three cuts, copies, exchanges, odd texts or odd bytes. */
  private static byte[] mutated(String text, Random random) {
    StringBuilder s = new StringBuilder(text);
    int changes = 1 + random.nextInt(3);
    for (int i = 0; i < changes && s.length() > 2; i++) {
      int from = random.nextInt(s.length());
      int to = Math.min(s.length(), from + 1 + random.nextInt(random.nextInt(10) == 0 ? 400 : 8));
      int at = random.nextInt(s.length());
      switch (random.nextInt(5)) {
        case 0 -> s.delete(from, to);
        case 1 -> s.insert(at, s.substring(from, to));
        case 2 -> s.replace(from, to, ODD.get(random.nextInt(ODD.size())));
        case 3 -> s.insert(at, ODD.get(random.nextInt(ODD.size())));
        default -> s.setCharAt(at, (char) (32 + random.nextInt(95)));
      }
    }
    byte[] bytes = s.toString().getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(10) == 0 && bytes.length > 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}
